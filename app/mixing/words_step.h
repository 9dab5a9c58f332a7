// A step of mixing that is told in words.
#pragma once

#include "app/widgets/theme.h"

#include <QWidget>

class QLabel;

namespace ullage::app
{

class WordsStep : public QWidget
{
    Q_OBJECT

public:
    explicit WordsStep(TextRole heading, QWidget* parent = nullptr);

    void setWords(const QString& heading, const QString& words);
    /// Below the words, under a label that is worded by whoever adds it.
    QLabel* addField(QWidget* field);
    /// Below all that, in the room that is left.
    void addPicture(QWidget* picture);

private:
    QLabel* m_heading;
    QLabel* m_words;
};

} // namespace ullage::app
