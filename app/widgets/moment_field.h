// A field for a day, or a day and a time, that takes what people write (words/moment_reading.h).
//
// What is not understood stays as it was typed and is no value; problem() says why. What is
// understood is written out in the locale's form when the keyboard leaves. Up and Down step the
// part that the cursor stands in, days elsewhere; Alt+Down or the arrow opens a calendar.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QLineEdit>

#include "app/words/moment_reading.h"

#include <functional>

class QCalendarWidget;
class QToolButton;

namespace ullage::app
{

class MomentField : public QLineEdit
{
    Q_OBJECT

public:
    using Clock = std::function<chemistry::Instant()>;
    enum class Asks { Moment, Day };

    MomentField(Asks asks, Clock clock, const QLocale& locale, QWidget* parent = nullptr);

    /// What is shown is shown anew; what was typed stays.
    void setReadingLocale(const QLocale& locale);
    /// A day without its year, a weekday and a time alone are the next there is, not the last.
    void setLooksAhead();
    /// Nothing need be written: then it is no day, and nothing is wrong. Empties it.
    void setMayBeEmpty();
    /// As if nothing had been written. Emits nothing.
    void showNone();
    [[nodiscard]] bool isEmpty() const { return text().trimmed().isEmpty(); }
    /// Shows it. Emits nothing.
    void setShown(QDate date, QTime time);
    void setShown(QDate date) { setShown(date, QTime(0, 0)); }

    /// What was understood last (also of one that is empty), as a calendar and a clock on the wall
    /// show it.
    [[nodiscard]] QDate date() const { return m_date; }
    [[nodiscard]] QTime time() const { return m_time; }
    /// "now" was written: whatever moment it is then.
    [[nodiscard]] bool saysNow() const { return m_read.now; }
    [[nodiscard]] bool isUnderstood() const { return m_read.isUnderstood(); }
    /// What was not understood, in a sentence without the field's name; empty if all was, and for
    /// one that may be empty and is.
    [[nodiscard]] QString problem() const;
    /// The same in a few words.
    [[nodiscard]] QString shortProblem() const;

    void openCalendar();

signals:
    /// The user wrote or chose something else, be it understood or not.
    void readingChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void readTyped();
    void step(int by);
    void choose(QDate date);
    void showValidity();
    void buildCalendar();
    void placeButton();
    void retranslate();
    [[nodiscard]] QString written() const;
    [[nodiscard]] QString wrongPart() const;
    [[nodiscard]] QChar figureAt(int cursor) const;
    void selectFigure(QChar figure);

    Asks m_asks;
    Clock m_clock;
    QLocale m_locale;
    ReadMoment m_read;
    QDate m_date;
    QTime m_time;
    bool m_typed = false; ///< since it was written out
    bool m_ahead = false;
    bool m_mayBeEmpty = false;
    QToolButton* m_open;
    QWidget* m_popup = nullptr;
    QCalendarWidget* m_calendar = nullptr;
};

} // namespace ullage::app
