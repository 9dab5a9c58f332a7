// What the day book shows: kinds as chips, a bottle, a person, a period and words.
#pragma once

#include <QWidget>

#include "app/daybook/day_words.h"

#include <QDate>
#include <QLocale>

#include <vector>

class QButtonGroup;
class QComboBox;
class QLineEdit;
class QTimer;

namespace ullage::app
{

class MomentField;

class DayFilterBar : public QWidget
{
    Q_OBJECT

public:
    /// Days of the user's calendar. Week is today and the six days before it; Between asks for two
    /// days, both within, in either order.
    enum class Span { All, Today, Week, Month, Year, LastYear, Between };

    explicit DayFilterBar(QWidget* parent = nullptr);

    /// Today on the user's calendar, which periods count from.
    void setToday(QDate today);
    void setLocale(const QLocale& locale);
    /// Bottles to choose from, newest first; the chosen one stays, even if it is not among them.
    void setBottles(const std::vector<ledger::BatchState>& bottles);
    /// People to choose from. Without any there is no such choice.
    void setPeople(const std::vector<std::string>& people);

    /// What is chosen, as moments in UTC; without the meanings of the text (addMeanings()).
    [[nodiscard]] store::DayFilter filter() const;
    /// Everything is let through.
    [[nodiscard]] bool isOpen() const { return filter() == store::DayFilter(); }
    /// What is let through, in words: "Runs · Dev 14 · This year"; "Everything" for all.
    [[nodiscard]] QString words() const;

    void setGroup(DayGroup group);
    /// Chooses it, even if it is not among the bottles offered.
    void setBottle(const QString& id, const QString& name);
    void setSpan(Span span);
    /// Lets everything through; tells it once.
    void reset();
    /// Where to type words.
    [[nodiscard]] QLineEdit* find() const { return m_find; }

signals:
    /// Something else is let through; of typing and dates only once that pauses for a quarter of a
    /// second.
    void changed();

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void showDates();
    [[nodiscard]] MomentField* dayField();
    [[nodiscard]] std::pair<QDate, QDate> dates() const; ///< first and last day; invalid for none

    QDate m_today; // before the fields, which ask for it
    QLocale m_locale;
    QButtonGroup* m_groups;
    QComboBox* m_bottle;
    QComboBox* m_person;
    QComboBox* m_span;
    MomentField* m_from;
    MomentField* m_until;
    QLineEdit* m_find;
    QTimer* m_pause;
};

} // namespace ullage::app
