// The frame of a dialog that tells what was found: a heading, a few sentences, a list of lines,
// more of them behind "Details", and buttons.
#pragma once

#include <QDialog>
#include <QString>
#include <QStringList>

class QDialogButtonBox;
class QVBoxLayout;

namespace ullage::app
{

enum class Tone;

/// Only a frame: whoever is one adds its parts in the order they stand in. Texts may hold what
/// persons typed.
class ListingDialog : public QDialog
{
    Q_OBJECT

protected:
    ListingDialog(const QString& title, const QString& heading, QWidget* parent);

    void addSentence(const QString& text, Tone tone);
    /// Nothing for no lines. `name` is what the list is of.
    void addList(const QString& name, const QStringList& lines);
    /// The same, hidden until they are asked for.
    void addDetails(const QStringList& lines);
    /// The last part; buttons are added to it.
    QDialogButtonBox* addButtons();

private:
    QVBoxLayout* m_whole;
};

} // namespace ullage::app
