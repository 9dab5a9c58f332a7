#include "app/dialogs/labels_dialog.h"
#include "app/session/session_door.h"
#include "app/widgets/moment_field.h"
#include "app/widgets/prompts.h"
#include "tests/app/screens/every_screen.h"

#include <QCalendarWidget>
#include <QCoreApplication>
#include <QPrintPreviewDialog>
#include <QPushButton>

namespace ullage::app
{

namespace
{

QString said(const char* context, const char* words)
{
    return QCoreApplication::translate(context, words);
}

void seePreview(Door& door, const SeenScreen& seen)
{
    LabelsDialog labels(door, {});
    labels.show();
    letSettle();
    for (auto* button : labels.findChildren<QPushButton*>()) {
        if (button->isDefault())
            button->click();
    }
    letSettle();
    if (auto* preview = labels.findChild<QPrintPreviewDialog*>()) {
        seen(*preview, QStringLiteral("qt-preview"));
        preview->close();
    }
}

} // namespace

void seeQtDialogs(Session& session, Preferences& preferences, const SeenScreen& seen)
{
    SessionDoor door(session, preferences);
    seePreview(door, seen);
    constexpr auto kLabels = "ullage::app::LabelsDialog";
    seeAsked(QStringLiteral("qt-file-open"), seen, [] {
        (void)prompts().openFile(nullptr, said("MissingBook", "Open book"),
                                 said("MissingBook", "Books (*.ullage);;All files (*)"));
    });
    seeAsked(QStringLiteral("qt-file-save"), seen, [&] {
        (void)prompts().saveFile(nullptr, said(kLabels, "Save labels"),
                                 said(kLabels, "labels") + QStringLiteral(".pdf"),
                                 said(kLabels, "PDF (*.pdf)"));
    });
    MomentField when(
        MomentField::Asks::Day, [&door] { return door.now(); }, door.wording().locale);
    when.show();
    letSettle();
    when.openCalendar();
    letSettle();
    if (auto* calendar = when.findChild<QCalendarWidget*>())
        seen(*calendar->window(), QStringLiteral("qt-calendar"));
}

} // namespace ullage::app
