#include "app/cli/command_line.h"

#include "app/words/number_text.h"
#include "app/words/printable_text.h"
#include "app/words/quantity_words.h"
#include "core/store/report_json.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct TimeCommand {
    Q_DECLARE_TR_FUNCTIONS(TimeCommand)
};

const Wording kPlain{{}, QLocale(QLocale::C)};

Result<double> quantity(QuantityKind kind, const char* field, const QString& text,
                        const char* allowed)
{
    const auto read = readQuantity(kind, text, kPlain);
    if (!read.value) {
        return refuse({.code = ErrorCode::Malformed,
                       .field = field,
                       .text = text.toStdString(),
                       .allowed = allowed});
    }
    return *read.value;
}

// "9:30@20,8:00@22": times must have a colon, so that "9" is never taken for nine seconds.
Result<std::vector<chemistry::TimeAtTemperature>> readBase(const QString& text)
{
    constexpr const char* kForm = "M:SS@T[,M:SS@T…], such as 9:30@20,8:00@22";
    std::vector<chemistry::TimeAtTemperature> pairs;
    for (const QString& part : text.split(u',')) {
        const QStringList halves = part.split(u'@');
        if (halves.size() != 2 || !halves[0].contains(u':')) {
            return refuse({.code = ErrorCode::Malformed,
                           .field = "--base",
                           .text = part.toStdString(),
                           .allowed = kForm});
        }
        const auto time = quantity(QuantityKind::Time, "--base", halves[0].trimmed(), kForm);
        if (!time) {
            return tl::unexpected(time.error());
        }
        const auto degrees =
            quantity(QuantityKind::Temperature, "--base", halves[1].trimmed(), kForm);
        if (!degrees) {
            return tl::unexpected(degrees.error());
        }
        pairs.push_back({chemistry::Celsius(*degrees), chemistry::Seconds(*time)});
    }
    return pairs;
}

QString warningText(std::string_view code, const Wording& wording)
{
    if (code == "outside-usual-range") {
        return TimeCommand::tr("Outside %1 to %2 times are less sure.")
            .arg(shortTemperatureText(chemistry::kCoolestUsual, wording),
                 shortTemperatureText(chemistry::kWarmestUsual, wording));
    }
    if (code == "extrapolated") {
        return TimeCommand::tr(
            "The leaflet's times do not reach this temperature: extended by Q10.");
    }
    if (code == "not-enough-films-left") {
        return TimeCommand::tr("The bottle does not have that many films left.");
    }
    if (code == "test-first") {
        return TimeCommand::tr("Test this bottle first.");
    }
    return code == "discard" ? TimeCommand::tr("This bottle is to be discarded.")
                             : QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
}

} // namespace

int timeCommand(const Call& call)
{
    const Arguments& arguments = call.arguments();
    const QString json = QStringLiteral("json");
    const QString films = QStringLiteral("films");
    const QStringList needed{QStringLiteral("batch"), QStringLiteral("base"),
                             QStringLiteral("temperature")};
    if (!call.takes(needed + QStringList{films, json}, 0)) {
        return kWrongUsage;
    }
    for (const QString& option : needed) {
        if (!arguments.has(option)) {
            return call.wrongUsage(TimeCommand::tr("“time” needs --%1.").arg(option));
        }
    }
    const auto base = readBase(arguments.value(needed[1]));
    if (!base) {
        return call.refused(base.error());
    }
    const auto temperature =
        quantity(QuantityKind::Temperature, "--temperature", arguments.value(needed[2]),
                 "a temperature such as 20.5 or 68F");
    if (!temperature) {
        return call.refused(temperature.error());
    }
    double count = 1;
    if (arguments.has(films)) {
        const auto read =
            quantity(QuantityKind::Count, "--films", arguments.value(films), "a number of films");
        if (!read) {
            return call.refused(read.error());
        }
        if (auto fine = checkRange("--films", *read, 0.01, 1000, "films"); !fine) {
            return call.refused(fine.error());
        }
        count = *read;
    }
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open) {
        return code;
    }
    const auto batch =
        open->book->batch(arguments.value(needed[0]).toStdString(), call.around().clock());
    if (!batch) {
        return call.refused(batch.error());
    }
    const auto next =
        store::nextTime(*batch, *base, chemistry::Celsius(*temperature), chemistry::Films(count));
    if (!next) {
        return call.refused(next.error());
    }
    if (arguments.has(json)) {
        call.print(store::timeJson(*next));
        return kDone;
    }
    const Wording wording{usualUnits(QLocale()), QLocale()};
    const QString text =
        TimeCommand::tr("%1   next load in %2\n")
            .arg(timeText(next->time, TimeStep::FiveSeconds),
                 printable(QString::fromStdString(batch->name))) +
        TimeCommand::tr("%1   leaflet time at %2\n")
            .arg(timeText(next->base), shortTemperatureText(next->temperature, wording)) +
        (batch->inDoubt() ? TimeCommand::tr("%1   wear, at least\n")
                          : TimeCommand::tr("%1   wear\n"))
            .arg(factorText(next->wear, wording.locale)) +
        TimeCommand::tr("%1   control strip\n").arg(factorText(next->strip, wording.locale));
    call.printText(text);
    if (batch->inDoubt()) {
        call.say(TimeCommand::tr(
            "How much film it has done is not all known: it needs at least this time."));
    }
    if (next->carried) {
        call.say(TimeCommand::tr("By the range of Q10 it may be %1 to %2.")
                     .arg(timeText(next->carried->shortest, TimeStep::FiveSeconds),
                          timeText(next->carried->longest, TimeStep::FiveSeconds)));
        if (next->carried->fromOnePair) {
            call.say(TimeCommand::tr("A second time for another temperature would be better."));
        }
    }
    for (const std::string_view warning : next->warnings) {
        call.say(warningText(warning, wording));
    }
    return kDone;
}

} // namespace ullage::app
