// Which period is looked at: a choice of the usual ones, or two days.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QWidget>

#include "core/ledger/statistics.h"

#include <QDate>
#include <QLocale>
#include <QString>

#include <utility>

class QComboBox;
class QTimer;

namespace ullage::app
{

class MomentField;

class PeriodBar : public QWidget
{
    Q_OBJECT

public:
    /// Calendar months and years of the user's clock; TwelveMonths is this month and the eleven
    /// before it, Between asks for two days, both of them in it. Only LastYear and Between end.
    enum class Span { TwelveMonths, Year, LastYear, All, Between };

    explicit PeriodBar(QWidget* parent = nullptr);

    /// What "this year" is counted from; the days offered at first end with it.
    void setToday(QDate today);
    void setReadingLocale(const QLocale& locale);
    void setSpan(Span span);
    /// Chooses Between, with these days; they may come the wrong way round.
    void setDays(QDate from, QDate until);

    [[nodiscard]] Span span() const;
    [[nodiscard]] ledger::Period period() const;
    /// For a heading: "2026", "Last 12 months", "1 Jun 2026 to 30 Jun 2026".
    [[nodiscard]] QString words() const;

signals:
    /// Another period was chosen, a while after the last letter of a day.
    void changed();

protected:
    void changeEvent(QEvent* event) override;

private:
    MomentField* dayField();
    [[nodiscard]] std::pair<QDate, QDate> days() const;
    void showDays();
    void retranslate();

    QDate m_today;
    QLocale m_locale;
    QComboBox* m_span;
    MomentField* m_from;
    MomentField* m_until;
    QTimer* m_pause;
};

} // namespace ullage::app
