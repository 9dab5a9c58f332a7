// The label of the window: see plain_text.h.
#pragma once

#include <QLabel>
#include <QString>

namespace ullage::app
{

/// A label that shows its text letter by letter. With a buddy "&" still marks the key of our own
/// words: typed parts of such a text go through plainCaption().
class PlainLabel : public QLabel
{
public:
    explicit PlainLabel(QWidget* parent = nullptr, Qt::WindowFlags flags = {});
    explicit PlainLabel(const QString& text, QWidget* parent = nullptr, Qt::WindowFlags flags = {});
};

} // namespace ullage::app
