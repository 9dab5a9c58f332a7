// What pages are built of: a panel with a heading.
#pragma once

#include <QFrame>
#include <QString>

class QLabel;
class QVBoxLayout;

namespace ullage::app
{

/// A rounded panel with a quiet heading; what it holds goes into body().
class Card : public QFrame
{
    Q_OBJECT

public:
    enum class Ground { Plain, Caution, Calm };

    explicit Card(const QString& title = {}, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setGround(Ground ground);
    [[nodiscard]] QVBoxLayout* body() const { return m_body; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Ground m_ground = Ground::Plain;
    QLabel* m_title;
    QVBoxLayout* m_body;
};

} // namespace ullage::app
