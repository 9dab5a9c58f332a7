// Which dates go into a calendar's file, and whether it is kept up to date.
#pragma once

#include "app/widgets/form_dialog.h"
#include "core/cupboard/known_dates.h"

#include <QString>

#include <array>

class QCheckBox;

namespace ullage::app
{

class CalendarDialog : public FormDialog
{
    Q_OBJECT

public:
    /// `kept` is the file that is kept up to date now, empty for none.
    CalendarDialog(const Wording& wording, const cupboard::DateKinds& kinds, const QString& kept,
                   QWidget* parent = nullptr);

    [[nodiscard]] cupboard::DateKinds kinds() const;
    [[nodiscard]] bool isKept() const;

signals:
    /// The file that was kept up to date is not to be any longer; the dialog has closed.
    void stopRequested();

protected:
    bool fieldsAreFine() override;
    Result<void> act() override { return {}; } ///< whoever opened it asks for the file

private:
    std::array<QCheckBox*, cupboard::kDateKindCodes.size()> m_kinds{};
    QCheckBox* m_keep;
};

} // namespace ullage::app
