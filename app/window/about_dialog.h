// What the program is, under which licence, and every caution in one place.
#pragma once

#include <QDialog>

namespace ullage::app
{

class AboutDialog : public QDialog
{
    Q_OBJECT

public:
    explicit AboutDialog(QWidget* parent = nullptr);
};

} // namespace ullage::app
