// What the hands should do now, and how long until that changes.
#pragma once

#include <QString>
#include <QWidget>

namespace ullage::app
{

class CuePanel : public QWidget
{
    Q_OBJECT

public:
    enum class Mood {
        Calm,   ///< nothing to do now
        Act,    ///< hands on the tank
        Urgent, ///< the step's time is up
    };

    explicit CuePanel(QWidget* parent = nullptr);

    /// `bold`: whether the mood may fill the panel (the visual cue); the words are the same.
    void show(const QString& cue, const QString& scheme, Mood mood, bool bold);
    [[nodiscard]] QString text() const { return m_cue; }
    [[nodiscard]] Mood mood() const { return m_mood; }

    /// Larger, to be read from across the room.
    void setLarge(bool large);

    [[nodiscard]] QSize sizeHint() const override { return {400, int(88 * m_scale)}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {200, int(72 * m_scale)}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_cue;
    QString m_scheme;
    Mood m_mood = Mood::Calm;
    bool m_bold = true;
    double m_scale = 1;
};

} // namespace ullage::app
