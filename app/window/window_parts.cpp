#include "app/window/window_parts.h"

#include "app/widgets/prompts.h"
#include "app/window/main_window.h"
#include "app/words/error_words.h"
#include "app/words/fault_words.h"

namespace ullage::app
{

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

void openOnce(QDialog* dialog)
{
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace ullage::app
