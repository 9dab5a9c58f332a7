// The time left, as large as its place allows: to be read from across the room.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QWidget>

#include "core/chemistry/quantities.h"

#include <QString>

namespace ullage::app
{

class BigClock : public QWidget
{
    Q_OBJECT

public:
    enum class State { Waiting, Running, Held, Over };

    explicit BigClock(QWidget* parent = nullptr);

    /// `left` below zero counts what runs over; `under` is the line below ("left of 12:02").
    void show(chemistry::Seconds left, State state, const QString& under);
    [[nodiscard]] QString text() const { return m_text; }
    /// Height of the digits in pixels as painted now.
    [[nodiscard]] int digitHeight() const;

    [[nodiscard]] QSize sizeHint() const override { return {400, 240}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {220, 110}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QFont digits() const;

    QString m_text;
    QString m_under;
    State m_state = State::Waiting;
};

/// "4:47" left, rounded up as a countdown is read; "+0:12" when it runs over.
QString clockText(chemistry::Seconds left);

} // namespace ullage::app
