// What the program is and under which licence.
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
