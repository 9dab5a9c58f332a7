// Everything that happened to one bottle, newest first, and taking any of it back.
#pragma once

#include "app/dialogs/voiding_dialog.h"

class QTreeWidget;

namespace ullage::app
{

/// One entry at a time is taken back, with a reason, which must be given. What the Book refuses
/// (CannotVoid, AlreadyVoided) leaves the dialog open.
class HistoryDialog : public VoidingDialog
{
    Q_OBJECT

public:
    HistoryDialog(Door& door, const Bottle& bottle, QWidget* parent = nullptr);

protected:
    bool restIsFine() override;
    [[nodiscard]] std::vector<TakingBack> events() const override;
    [[nodiscard]] QString nothingFollows() const override;

private:
    void fill();
    void sayWhatGoesAlong();

    std::string m_batch;
    QTreeWidget* m_events;
    QLabel* m_along; ///< which other bottle it is about too
};

} // namespace ullage::app
