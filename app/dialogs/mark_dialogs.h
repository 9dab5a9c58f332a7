// Deeds that say something about a bottle: notes, marks, where and how it stood, how it ended.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLineEdit;
class QPlainTextEdit;

namespace ullage::app
{

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

/// "Contaminated" or "All dissolved".
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

class OpenedDialog : public BottleDialog
{
    Q_OBJECT

public:
    OpenedDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    Result<void> act() override;
};

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
