// A spreadsheet of pencil records on its way into the book, in three steps: how it was read, which
// column is what, what comes in. All of it comes in, or nothing.
//
// The dialog understands nothing itself. It says what was chosen (picks()), and is told what
// follows.
#pragma once

#include "app/dialogs/sheet_view.h"
#include "app/widgets/asking_dialog.h"

#include <QTimer>

class QLabel;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace ullage::app
{

class SheetColumnsStep;
class SheetComingStep;
class SheetReadingStep;

class SheetDialog : public AskingDialog
{
    Q_OBJECT

public:
    enum class Step { Reading, Columns, Coming };

    /// `sheet` is the file's name.
    SheetDialog(const QString& sheet, QWidget* parent);

    /// How it would come in with picks().
    void setView(const SheetView& view);
    /// While it is read or judged; importing waits for it.
    void setJudging(bool judging);
    [[nodiscard]] SheetPicks picks() const;
    [[nodiscard]] Step step() const;
    void setStep(Step step);

    /// Choices are asked about before they are let go of.
    void reject() override;

signals:
    /// Something was chosen: read and judge anew. Told once choices pause for a moment.
    void decided();
    void importWanted();
    /// The mapping is to be saved as a file, for the command line.
    void mappingWanted();

private:
    void addButtons(QVBoxLayout* whole);
    void showState();
    void focusWhatIsAsked();
    void chosen();

    bool m_touched = false;
    bool m_judging = false;
    bool m_refused = false; ///< rows of the last view
    QString m_notYet;       ///< of the last view
    QTimer m_rest;          ///< between a choice and its being told
    QLabel* m_at;           ///< which step it is
    QStackedWidget* m_steps;
    SheetReadingStep* m_reading;
    SheetColumnsStep* m_columns;
    SheetComingStep* m_coming;
    QLabel* m_state;
    QPushButton* m_back = nullptr;
    QPushButton* m_next = nullptr;
    QPushButton* m_import = nullptr;
};

} // namespace ullage::app
