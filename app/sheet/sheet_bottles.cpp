#include "app/sheet/sheet_bottles.h"

#include "app/words/moment_text.h"

#include <QStringList>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr std::chrono::minutes kBeforeEnd{1};
constexpr int kMostNamed = 8;

bool isCalled(const KnownBottle& bottle, const QString& name)
{
    return bottle.name.simplified().compare(name, Qt::CaseInsensitive) == 0;
}

} // namespace

const KnownBottle* SheetBottles::named(const QString& name, chemistry::Instant at) const
{
    const KnownBottle* best = nullptr;
    for (const KnownBottle& one : m_bottles) {
        const bool there = one.mixed <= at && (!one.ended || at <= *one.ended);
        if (there && isCalled(one, name) && (!best || one.mixed >= best->mixed)) {
            best = &one;
        }
    }
    return best;
}

Error SheetBottles::whyNone(const QString& name, chemistry::Instant at) const
{
    Error error{.code = ErrorCode::UnknownId, .text = name.toStdString()};
    QStringList there;
    for (const KnownBottle& one : m_bottles) {
        const bool mixed = one.mixed <= at;
        if (isCalled(one, name)) {
            error.code = mixed ? ErrorCode::AfterEnd : ErrorCode::BeforeMixing;
            error.subject = one.name.toStdString();
        }
        if (mixed && (!one.ended || at <= *one.ended) && there.size() < kMostNamed &&
            !one.name.isEmpty()) {
            there << one.name.simplified();
        }
    }
    if (error.code == ErrorCode::UnknownId) {
        error.allowed = there.join(QStringLiteral(", ")).toStdString();
    }
    return error;
}

SheetMoment SheetBottles::within(const QString& name, SheetMoment moment) const
{
    if (moment.timeKnown || named(name, moment.at)) {
        return moment;
    }
    const QDate day = localTime(moment.at).date();
    for (const KnownBottle& one : m_bottles) {
        if (!isCalled(one, name)) {
            continue;
        }
        if (one.mixed > moment.at && localTime(one.mixed).date() == day) {
            return {one.mixed, false};
        }
        if (one.ended && *one.ended < moment.at && localTime(*one.ended).date() == day) {
            return {std::max(one.mixed, *one.ended - kBeforeEnd), false};
        }
    }
    return moment;
}

} // namespace ullage::app
