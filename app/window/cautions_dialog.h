// Every caution in one place, to be read away from the work.
#pragma once

#include <QDialog>

namespace ullage::app
{

class CautionsDialog : public QDialog
{
    Q_OBJECT

public:
    explicit CautionsDialog(QWidget* parent = nullptr);
};

} // namespace ullage::app
