#include "app/window/window_parts.h"

#include "app/widgets/prompts.h"
#include "app/window/main_window.h"
#include "app/words/error_words.h"

namespace ullage::app
{

QString WindowParts::sentence(const Error& error) const { return errorSentence(error, wording()); }

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
