// Deeds that say something about a bottle: notes, marks, where and how it stood, how it ended.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLineEdit;
class QPlainTextEdit;

namespace ullage::app
{

/// A note; some words are needed.
class NoteDialog : public BottleDialog
{
    Q_OBJECT

public:
    NoteDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    QPlainTextEdit* m_text;
};

/// "Contaminated", with what happened if that is known, or "All dissolved".
class MarkDialog : public BottleDialog
{
    Q_OBJECT

public:
    enum class Mark { Contaminated, Dissolved };
    MarkDialog(Mark mark, const DialogContext& context, const Bottle& bottle,
               QWidget* parent = nullptr);

protected:
    Result<void> act() override;

private:
    Mark m_mark;
    QLineEdit* m_why = nullptr;
};

/// Where it stands from then on: 0 to 45 °C.
class StoredAtDialog : public BottleDialog
{
    Q_OBJECT

public:
    StoredAtDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    Result<void> act() override;

private:
    QuantityEdit* m_temperature;
};

/// How long it stood open, 0.01 to 87 600 h, with how wide a surface, 0.1 to 1 000 000 cm².
class StoodOpenDialog : public BottleDialog
{
    Q_OBJECT

public:
    StoodOpenDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    Result<void> act() override;

private:
    QuantityEdit* m_hours;
    QuantityEdit* m_surface;
};

/// Opened and closed again, with nothing taken or added.
class OpenedDialog : public BottleDialog
{
    Q_OBJECT

public:
    OpenedDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    Result<void> act() override;
};

/// The end of a batch; where it goes must be said.
class DiscardDialog : public BottleDialog
{
    Q_OBJECT

public:
    DiscardDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    QComboBox* m_how;
};

} // namespace ullage::app
