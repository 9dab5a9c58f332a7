// English plurals without the program's translations, so that tests read "1 film" and "2 films".
#pragma once

#include <QTranslator>

namespace ullage::app
{

class EnglishPlurals : public QTranslator
{
public:
    using QTranslator::QTranslator;

    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* /*context*/, const char* source,
                                    const char* /*disambiguation*/, int n) const override
    {
        const QString text = QString::fromUtf8(source);
        if (n < 0 || !text.contains(QLatin1String("(s)")))
            return {};
        if (n == 1)
            return QString(text).remove(QLatin1String("(s)"));
        return QString(text)
            .replace(QLatin1String("try(s)"), QLatin1String("tries"))
            .replace(QLatin1String("(s)"), QLatin1String("s"));
    }
};

} // namespace ullage::app
