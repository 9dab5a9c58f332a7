// What the day book shows: kinds as chips, a bottle, a person, a period and words.
#pragma once

#include <QWidget>

#include "app/daybook/day_words.h"
#include "app/widgets/period_bar.h"

#include <QDate>
#include <QLocale>

#include <vector>

class QButtonGroup;
class QComboBox;
class QLineEdit;
class QTimer;

namespace ullage::app
{

class DayFilterBar : public QWidget
{
    Q_OBJECT

public:
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
    /// What is let through, in words: "Runs · Dev 14 · 2026"; "Everything" for all.
    [[nodiscard]] QString words() const;

    void setGroup(DayGroup group);
    /// Chooses it, even if it is not among the bottles offered.
    void setBottle(const QString& id, const QString& name);
    /// The choice of the period.
    [[nodiscard]] PeriodBar* periodBar() const { return m_period; }
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

    QButtonGroup* m_groups;
    QComboBox* m_bottle;
    QComboBox* m_person;
    PeriodBar* m_period;
    QLineEdit* m_find;
    QTimer* m_pause;
};

} // namespace ullage::app
