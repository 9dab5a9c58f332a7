#include "app/window/window_parts.h"

#include "app/widgets/prompts.h"
#include "app/window/main_window.h"
#include "app/words/error_words.h"
#include "app/words/fault_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WindowParts)
};

} // namespace

QString WindowParts::sentence(const Error& error) const
{
    // A fault of the book names an entry: told by what people know that one by.
    return error.entry > 0 || error.code == ErrorCode::NotAsEntered
               ? faultSentence(error, session.namesOf(error), session.now(), wording())
               : errorSentence(error, wording());
}

void WindowParts::fail(const QString& title, const Error& error) const
{
    prompts().fail(&window, title, sentence(error));
}

void WindowParts::failSum(const QString& title, const Error& error) const
{
    QString told = sentence(error);
    if (error.code == ErrorCode::NotAsEntered)
        told += u'\n' + Words::tr("Nothing is left out of a sum, so there is none. In the File "
                                  "menu, “Copies…” puts a copy in the book's place, and “Salvage "
                                  "a damaged book…” takes what is sound into a new one.");
    prompts().fail(&window, title, told);
}

void openOnce(QDialog* dialog)
{
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace ullage::app
