// A caution where the work is.
#pragma once

#include "app/widgets/card.h"

#include <QStringList>

class QLabel;

namespace ullage::app
{

/// A caution of the work in hand, in amber, one short paragraph a line.
class CautionBox : public Card
{
    Q_OBJECT

public:
    explicit CautionBox(const QString& heading, QWidget* parent = nullptr);

    void setLines(const QStringList& lines);

private:
    QLabel* m_text;
};

} // namespace ullage::app
