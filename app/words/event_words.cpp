#include "app/words/event_words.h"

#include "app/words/film_words.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/ledger/contradiction.h"
#include "core/ledger/line_description.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Events)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

// The text with the user's own words after it: "Drew off 20 ml: spilled".
QString with(const QString& text, const std::string& own)
{
    const QString said = whyText(own);
    return said.isEmpty() ? text : Words::tr("%1: %2", "what, why").arg(text, said);
}

struct EventLine {
    const formulary::Formulary& formulary;
    const Wording& wording;

    [[nodiscard]] QString solution(const std::string& id) const
    {
        const auto found = formulary.solution(id);
        return shownName(found ? found->name : id);
    }
    [[nodiscard]] QString vessel(const std::string& id) const
    {
        const auto found = formulary.vessel(id);
        return shownName(found ? found->name : id);
    }
    [[nodiscard]] QString number(double value, int decimals) const
    {
        return numberText(value, decimals, wording.locale);
    }
    [[nodiscard]] QString judged(const QString& text, std::optional<bool> passed) const
    {
        if (!passed)
            return text;
        return (*passed ? Words::tr("%1, passed") : Words::tr("%1, failed")).arg(text);
    }

    QString operator()(const Mixed& e) const
    {
        const QString text = e.historyUnknown ? Words::tr("Found %1 of %2 in %3, history unknown")
                             : e.from.empty() ? Words::tr("Mixed %1 of %2 in %3")
                                              : Words::tr("Decanted %1 of %2 into %3");
        return text.arg(volumeText(e.volume, wording), solution(e.solution), vessel(e.vessel));
    }
    QString operator()(const Processed& e) const
    {
        QString text = loadText(e.load, wording.locale);
        if (e.used)
            text = Words::tr("%1 in %2", "films, volume").arg(text, volumeText(*e.used, wording));
        if (e.oneShot)
            return Words::tr("%1, one-shot").arg(text);
        if (e.second)
            text = Words::tr("%1, second bath").arg(text);
        if (e.lost.value() > 0)
            text = Words::tr("%1, %2 lost").arg(text, volumeText(e.lost, wording));
        return text;
    }
    QString operator()(const ToppedUp& e) const
    {
        const QString text = !e.solution.empty() ? Words::tr("Topped up with %1 of replenisher")
                             : e.from.empty()    ? Words::tr("Topped up with %1")
                                              : Words::tr("Topped up with %1 from another bottle");
        return text.arg(volumeText(e.volume, wording));
    }
    QString operator()(const Drawn& e) const
    {
        return with(Words::tr("Drew off %1").arg(volumeText(e.volume, wording)), e.why);
    }
    QString operator()(const Moved& e) const
    {
        return Words::tr("Moved to %1").arg(vessel(e.vessel));
    }
    QString operator()(const Opened&) const { return Words::tr("Opened"); }
    QString operator()(const StoodOpen& e) const
    {
        return Words::tr("Stood open for %1 h, %2 cm² of surface")
            .arg(number(e.time.value(), 1), number(e.surface.value(), 0));
    }
    QString operator()(const StoredAt& e) const
    {
        return Words::tr("Stored at %1").arg(temperatureText(e.temperature, wording));
    }
    QString operator()(const ClearingTested& e) const
    {
        return Words::tr("Cleared in %1 s at %2")
            .arg(number(e.time.value(), 0), temperatureText(e.temperature, wording));
    }
    QString operator()(const StripTested& e) const
    {
        QString text = Words::tr("Control strip");
        if (e.density)
            text = Words::tr("%1, density %2").arg(text, number(*e.density, 2));
        if (e.factor)
            text = Words::tr("%1, time %2").arg(text, factorText(*e.factor, wording.locale));
        return judged(text, e.passed);
    }
    QString operator()(const Looked& e) const
    {
        return with(judged(Words::tr("Looked at"), e.passed), e.why);
    }
    QString operator()(const Contaminated& e) const
    {
        return with(Words::tr("Marked contaminated"), e.why);
    }
    QString operator()(const Dissolved&) const { return Words::tr("All dissolved"); }
    QString operator()(const Noted& e) const { return noteText(e); }
    QString operator()(const Discarded& e) const { return with(Words::tr("Discarded"), e.how); }
    QString operator()(const Voided& e) const { return with(Words::tr("Taken back"), e.why); }
    QString operator()(const OpenedPacket&) const { return Words::tr("Packet opened"); }
    QString operator()(const Filtered&) const { return Words::tr("Filtered"); }
    QString operator()(const Measured& e) const
    {
        return with(Words::tr("Silver measured, %1 g/L").arg(number(e.silver.value(), 2)),
                    e.method);
    }
    QString operator()(const TestAsked& e) const { return testAskedText(e); }
    QString operator()(const Taken& e) const
    {
        return Words::tr("Taken from the cupboard, %1").arg(number(e.amount, 2));
    }
    QString operator()(const Counted& e) const
    {
        return Words::tr("Counted in the cupboard, %1").arg(number(e.amount, 2));
    }
    QString operator()(const ThrownAway& e) const { return with(Words::tr("Thrown away"), e.why); }
    QString operator()(const PouredIn& e) const
    {
        return Words::tr("Poured %1 into a can for waste").arg(volumeText(e.volume, wording));
    }
    QString operator()(const HandedOver& e) const
    {
        return with(Words::tr("Waste handed over"), e.to);
    }
};

} // namespace

QString loadText(const Load& load, const QLocale& locale)
{
    if (load.area)
        return Words::tr("%1 cm² of film").arg(numberText(load.area->value(), 0, locale));
    QStringList parts;
    for (const FilmCount& film : load.films)
        parts << Words::tr("%1 × %2", "count, film format")
                     .arg(filmCountText(film.count, locale), filmFormatShort(film.format));
    return parts.join(QStringLiteral(", "));
}

namespace
{

QString kindNameAt(std::size_t place)
{
    static const std::array<const char*, std::variant_size_v<Happening>> names{
        QT_TRANSLATE_NOOP("Events", "Mixed"),
        QT_TRANSLATE_NOOP("Events", "Film"),
        QT_TRANSLATE_NOOP("Events", "Topped up"),
        QT_TRANSLATE_NOOP("Events", "Drawn off"),
        QT_TRANSLATE_NOOP("Events", "Moved"),
        QT_TRANSLATE_NOOP("Events", "Opened"),
        QT_TRANSLATE_NOOP("Events", "Stood open"),
        QT_TRANSLATE_NOOP("Events", "Storage"),
        QT_TRANSLATE_NOOP("Events", "Clearing test"),
        QT_TRANSLATE_NOOP("Events", "Control strip"),
        QT_TRANSLATE_NOOP("Events", "Look"),
        QT_TRANSLATE_NOOP("Events", "Contaminated"),
        QT_TRANSLATE_NOOP("Events", "Dissolved"),
        QT_TRANSLATE_NOOP("Events", "Note"),
        QT_TRANSLATE_NOOP("Events", "Discarded"),
        QT_TRANSLATE_NOOP("Events", "Taken back"),
        QT_TRANSLATE_NOOP("Events", "Packet opened"),
        QT_TRANSLATE_NOOP("Events", "Filtered"),
        QT_TRANSLATE_NOOP("Events", "Silver measured"),
        QT_TRANSLATE_NOOP("Events", "Test asked for"),
        QT_TRANSLATE_NOOP("Events", "Taken from the cupboard"),
        QT_TRANSLATE_NOOP("Events", "Counted in the cupboard"),
        QT_TRANSLATE_NOOP("Events", "Thrown away"),
        QT_TRANSLATE_NOOP("Events", "Poured into a can for waste"),
        QT_TRANSLATE_NOOP("Events", "Waste handed over"),
    };
    return Words::tr(names[place]);
}

} // namespace

QString eventKindName(const Event& event) { return kindNameAt(event.what.index()); }

QString eventKindName(std::string_view kind)
{
    const auto* known = std::find(kKindCodes.begin(), kKindCodes.end(), kind);
    return known == kKindCodes.end()
               ? QString::fromUtf8(kind.data(), static_cast<qsizetype>(kind.size()))
               : kindNameAt(static_cast<std::size_t>(known - kKindCodes.begin()));
}

QString eventText(const Event& event, const formulary::Formulary& formulary, const Wording& wording)
{
    QString text = std::visit(EventLine{formulary, wording}, event.what);
    if (event.airLeft)
        text = Words::tr("%1; %2 of air left").arg(text, volumeText(*event.airLeft, wording));
    return text;
}

QString whyText(const std::string& why)
{
    if (why == "undone")
        return Words::tr("undone");
    if (why == "top-up")
        return Words::tr("to top up another bottle");
    if (why == "decant")
        return Words::tr("into a bottle of its own");
    if (why == "make-room")
        return Words::tr("to make room for the top-up");
    if (why == kRetimedReason)
        return Words::tr("its time was changed on import");
    if (why == kSettledReason)
        return Words::tr("in favour of an imported journal");
    return utf8(why);
}

} // namespace ullage::app
