// Decanting: a batch, or a part of it, into bottles of their own, several at once. All of it is one
// action; what follows for the batch and for each of them stands beside.
#pragma once

#include "app/dialogs/deed_dialog.h"
#include "app/dialogs/volume_question.h"
#include "core/ledger/book.h"

class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace ullage::app
{

class DecantRow;

class DecantDialog : public DeedDialog
{
    Q_OBJECT

public:
    DecantDialog(Door& door, const Bottle& bottle, QWidget* parent = nullptr);

    /// Ids of the batches that were made, in the order of their rows; empty before.
    [[nodiscard]] const std::vector<std::string>& decanted() const { return m_decanted; }
    /// How much stays behind, or by how much it is too much.
    [[nodiscard]] QString left() const;

protected:
    bool restIsFine() override;
    [[nodiscard]] std::optional<std::vector<ledger::Event>> wouldEnter() const override;
    [[nodiscard]] QString nothingFollows() const override;
    Result<void> act() override;

private:
    void addRowOfBottle();
    void takeLastAway();
    /// The batch as it was then, and the vessels that were free.
    void tellRows();
    void offer();
    void showLeft();
    /// Where every row says enough.
    [[nodiscard]] std::optional<std::vector<ledger::NewBatch>> batches() const;
    [[nodiscard]] chemistry::Millilitres taken() const;
    [[nodiscard]] std::optional<ledger::Batch> donor() const;

    std::string m_batch;
    QString m_name;
    QLabel* m_there;
    QScrollArea* m_area;
    QVBoxLayout* m_rowColumn;
    std::vector<DecantRow*> m_rows; ///< those that are shown, in their order
    QPushButton* m_another;
    QPushButton* m_fewer;
    QLabel* m_left;
    std::vector<std::string> m_free; ///< vessels, those to take first in front
    QStringList m_taken;             ///< names of all batches
    std::vector<std::string> m_decanted;
    VolumeQuestion m_littleQuestion;
};

} // namespace ullage::app
