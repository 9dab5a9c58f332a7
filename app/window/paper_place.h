// Pages of the book on paper: looked at first, then printed.
#pragma once

#include <QObject>

#include "app/paper/book_papers.h"
#include "app/window/window_parts.h"

namespace ullage::app
{

class PaperPlace : public QObject
{
    Q_OBJECT

public:
    explicit PaperPlace(const WindowParts& parts, QObject* parent = nullptr);

    /// Opens the preview, from where it is printed. A card is that of the bottle chosen on the
    /// Shelf; of a report it is asked which month. Nothing while no book is open.
    void print(PaperKind kind);

signals:
    /// What is shown in the preview just opened.
    void shown(const ullage::app::PaperDocument& document);

private:
    [[nodiscard]] std::optional<QDate> askMonth();
    void preview(const PaperDocument& document);

    WindowParts m_parts;
};

} // namespace ullage::app
