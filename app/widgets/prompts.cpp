#include "app/widgets/prompts.h"

#include "app/widgets/choice_dialog.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/red_paper.h"
#include "app/widgets/theme.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileIconProvider>
#include <QHeaderView>
#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QTreeView>

namespace ullage::app
{

namespace
{

constexpr QSize kChooser(760, 500); // of files

// Tells folders from files and looks into neither: what Qt's own provider does to find out what a
// file is opens it, and closing the open book by the way drops its locks.
class NamesOnly : public QFileIconProvider
{
public:
    using QFileIconProvider::icon;
    [[nodiscard]] QIcon icon(const QFileInfo& info) const override
    {
        return icon(info.isDir() ? QAbstractFileIconProvider::Folder
                                 : QAbstractFileIconProvider::File);
    }
    [[nodiscard]] QString type(const QFileInfo& info) const override { return info.suffix(); }
};

class RealPrompts : public Prompts
{
    Q_DECLARE_TR_FUNCTIONS(Prompts)

public:
    bool confirm(QWidget* parent, const Question& question) override
    {
        QMessageBox box(parent);
        box.setTextFormat(Qt::PlainText);
        box.setWindowTitle(plainTitle(question.title));
        box.setText(question.text);
        // Its label guesses, whatever the box's format is.
        box.setInformativeText(plainText(question.detail));
        QPushButton* yes = box.addButton(question.yes, QMessageBox::AcceptRole);
        QPushButton* no = question.no.isEmpty()
                              ? box.addButton(QMessageBox::Cancel)
                              : box.addButton(question.no, QMessageBox::RejectRole);
        box.setDefaultButton(question.danger ? no : yes);
        box.setEscapeButton(no);
        if (question.danger)
            setButtonLook(yes, ButtonLook::Danger);
        box.exec();
        return box.clickedButton() == yes;
    }

    void tell(QWidget* parent, const QString& title, const QString& text) override
    {
        show(parent, QMessageBox::NoIcon, title, text, {});
    }

    void fail(QWidget* parent, const QString& title, const QString& text,
              const QString& detail) override
    {
        show(parent, QMessageBox::Warning, title, text, detail);
    }

    std::optional<QString> askText(QWidget* parent, const QString& title, const QString& label,
                                   const QString& start) override
    {
        bool ok = false;
        const QString text = QInputDialog::getText(parent, plainTitle(title), plainText(label),
                                                   QLineEdit::Normal, start, &ok);
        return ok ? std::optional(text) : std::nullopt;
    }

    std::optional<int> choose(QWidget* parent, const QString& title, const QString& label,
                              const QStringList& ways) override
    {
        ChoiceDialog dialog(title, label, ways, parent);
        return dialog.exec() == QDialog::Accepted ? std::optional(dialog.chosen()) : std::nullopt;
    }

    std::optional<QString> openFile(QWidget* parent, const QString& title,
                                    const QString& filter) override
    {
        QFileDialog dialog(parent, title);
        dialog.setFileMode(QFileDialog::ExistingFile);
        return chosen(dialog, filter);
    }

    std::optional<QString> saveFile(QWidget* parent, const QString& title, const QString& name,
                                    const QString& filter) override
    {
        QFileDialog dialog(parent, title);
        dialog.setAcceptMode(QFileDialog::AcceptSave);
        dialog.selectFile(name);
        return chosen(dialog, filter);
    }

    std::optional<QString> openFolder(QWidget* parent, const QString& title) override
    {
        QFileDialog dialog(parent, title);
        dialog.setFileMode(QFileDialog::Directory);
        dialog.setOption(QFileDialog::ShowDirsOnly);
        return chosen(dialog, {});
    }

private:
    static void show(QWidget* parent, QMessageBox::Icon icon, const QString& title,
                     const QString& text, const QString& detail)
    {
        QMessageBox box(parent);
        box.setTextFormat(Qt::PlainText);
        box.setIcon(icon);
        box.setWindowTitle(plainTitle(title));
        box.setText(text);
        box.setDetailedText(detail);
        box.setStandardButtons(QMessageBox::Close);
        showQtDialogInRed(box);
        box.exec();
    }

    static std::optional<QString> chosen(QFileDialog& dialog, const QString& filter)
    {
        static NamesOnly names; // whoever gathers the files may ask it to the last
#if defined(Q_OS_UNIX) && !defined(Q_OS_MACOS)
        dialog.setOption(QFileDialog::DontUseNativeDialog); // it runs in this process and looks in
#endif
        dialog.setOption(QFileDialog::DontUseCustomDirectoryIcons);
        dialog.setIconProvider(&names);
        if (!filter.isEmpty())
            dialog.setNameFilters(filter.split(QStringLiteral(";;")));
        // Whole dates, and a name beside them.
        if (auto* files = dialog.findChild<QTreeView*>(QStringLiteral("treeView")))
            files->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
        dialog.resize(kChooser);
        showQtDialogInRed(dialog);
        const bool done = dialog.exec() == QDialog::Accepted && !dialog.selectedFiles().isEmpty();
        return done ? std::optional(dialog.selectedFiles().constFirst()) : std::nullopt;
    }
};

Prompts*& inForce()
{
    static RealPrompts real;
    static Prompts* current = &real;
    return current;
}

} // namespace

Prompts& prompts() { return *inForce(); }

PromptsInForce::PromptsInForce(Prompts& prompts) : m_before(inForce()) { inForce() = &prompts; }

PromptsInForce::~PromptsInForce() { inForce() = m_before; }

bool confirmOnce(QWidget* parent, const Question& question, QString& sure)
{
    const QString asked = question.text + question.detail;
    if (sure == asked)
        return true;
    if (!prompts().confirm(parent, question))
        return false;
    sure = asked;
    return true;
}

} // namespace ullage::app
