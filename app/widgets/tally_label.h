// A count of films as tally marks; its accessible name says it in words.
#pragma once

#include <QWidget>

namespace ullage::app
{

class TallyLabel : public QWidget
{
    Q_OBJECT

public:
    explicit TallyLabel(QWidget* parent = nullptr);

    void setFilms(double films);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    double m_films = 0;
};

} // namespace ullage::app
