// Choosing a film's format: rolls, sheets, strips by their length, and any other by its size.
//
// The box is typed into as well ("9x12cm"). What is asked besides, a length or a size, stands in a
// line of its own that whoever owns the box puts below it.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/films.h"

#include <QComboBox>

#include <optional>
#include <string>

class QHBoxLayout;
class QLabel;

namespace ullage::app
{

class QuantityEdit;

class FormatBox : public QComboBox
{
    Q_OBJECT

public:
    /// Shows 135-36.
    explicit FormatBox(const Wording& wording, QWidget* parent = nullptr);

    /// Shows a format as chemistry/films.h writes it. Emits formatChanged().
    void setFormat(const std::string& code);
    /// The format chosen, or what was typed for it; see problem().
    [[nodiscard]] std::string format() const;
    /// Why it is none, in words; empty if it is one.
    [[nodiscard]] QString problem() const;
    /// Length, or width and length; hidden where the box alone says it. To be laid out below.
    [[nodiscard]] QWidget* sizeLine() const { return m_sizeLine; }

signals:
    void formatChanged();

private:
    void fill();
    void buildSizeLine(const Wording& wording);
    void heading(const QString& text);
    void showSizeLine();
    [[nodiscard]] const chemistry::FilmStrip* strip() const;
    [[nodiscard]] bool otherSize() const;
    [[nodiscard]] std::optional<chemistry::FilmSize> typedSize() const;

    QWidget* m_sizeLine;
    QLabel* m_what;
    QuantityEdit* m_width;
    QLabel* m_times;
    QuantityEdit* m_length;
    QComboBox* m_unit;
};

} // namespace ullage::app
