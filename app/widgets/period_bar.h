// Which period is looked at: a month, a quarter or a year, one by one, the days between two, or one
// that ends with today.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QWidget>

#include "core/ledger/statistics.h"

#include <QDate>
#include <QLocale>
#include <QString>

#include <utility>
#include <vector>

class QComboBox;
class QLabel;
class QTimer;
class QToolButton;

namespace ullage::app
{

class MomentField;

class PeriodBar : public QWidget
{
    Q_OBJECT

public:
    /// Calendar days, months, quarters and years of the user's clock. Week is today and the six
    /// days before it, TwelveMonths this month and the eleven before it; Between asks for two days,
    /// both of them in it. TwelveMonths and All have no end.
    enum class Span { All, Today, Week, TwelveMonths, Month, Quarter, Year, Between };

    /// With these to choose from, in this order; the first, of which there must be one, is chosen.
    explicit PeriodBar(std::vector<Span> offered, QWidget* parent = nullptr);

    /// What "this year" is counted from; the days offered at first end with it.
    void setToday(QDate today);
    void setReadingLocale(const QLocale& locale);
    /// The one that today lies in; `span` must be one of those offered.
    void setSpan(Span span);
    /// So many months, quarters or years later, not beyond today's; nothing for the other spans.
    void step(int by);
    /// Chooses Between, with these days; they may come the wrong way round.
    void setDays(QDate from, QDate until);

    [[nodiscard]] Span span() const;
    [[nodiscard]] ledger::Period period() const;
    /// For a heading: "2026", "April to June 2026", "Last 12 months", "1 Jun 2026 to 30 Jun 2026".
    [[nodiscard]] QString words() const;

signals:
    /// Another period was chosen, a while after the last letter of a day.
    void changed();

protected:
    void changeEvent(QEvent* event) override;

private:
    MomentField* dayField();
    QToolButton* stepButton(const char* arrow, int by);
    [[nodiscard]] int monthsEach() const; ///< of a span that is gone through one by one, else 0
    [[nodiscard]] QDate firstDay() const; ///< of such a one
    [[nodiscard]] QString wordsFrom(QDate first) const; ///< of such a one that begins then
    [[nodiscard]] static QString nameOf(Span span);
    [[nodiscard]] std::pair<QDate, QDate> days() const;
    void showParts();
    void retranslate();

    QDate m_today; // before the fields, which ask for it
    QLocale m_locale;
    int m_back = 0; ///< how many before the one that today lies in
    QComboBox* m_span;
    QToolButton* m_earlier;
    QLabel* m_which;
    QToolButton* m_later;
    MomentField* m_from;
    MomentField* m_until;
    QTimer* m_pause;
};

} // namespace ullage::app
