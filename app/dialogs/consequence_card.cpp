#include "app/dialogs/consequence_card.h"

#include "app/widgets/factor_rows.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/verdict_words.h"
#include "core/ledger/next_load.h"

#include <QCoreApplication>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Consequences)
};

// One figure of a bottle in words; empty where it has none.
using Figure = QString (*)(const ledger::Outlook&, chemistry::Instant, const Wording&);

QString verdict(const ledger::Outlook& so, chemistry::Instant, const Wording&)
{
    if (so.batch.end == ledger::BatchEnd::Discarded)
        return Words::tr("discarded");
    if (so.batch.end == ledger::BatchEnd::UsedUp)
        return Words::tr("used up");
    return verdictWord(so.assessment.shown);
}

QString filmsLeft(const ledger::Outlook& so, chemistry::Instant, const Wording& wording)
{
    return so.assessment.filmsLeft ? filmsLeftText(*so.assessment.filmsLeft, wording) : QString();
}

QString filmsDone(const ledger::Outlook& so, chemistry::Instant, const Wording& wording)
{
    return filmsText(so.batch.filmsDone, wording);
}

QString volume(const ledger::Outlook& so, chemistry::Instant, const Wording& wording)
{
    return volumeText(so.batch.volume, wording);
}

QString nextTime(const ledger::Outlook& so, chemistry::Instant, const Wording& wording)
{
    const bool developer = so.batch.solution->role == formulary::Role::Developer;
    return developer ? factorText(ledger::bottleFactor(so.batch, so.assessment), wording.locale)
                     : QString();
}

QString standing(const ledger::Outlook& so, chemistry::Instant, const Wording& wording)
{
    return so.assessment.standingUsed ? percentText(*so.assessment.standingUsed, wording.locale)
                                      : QString();
}

// Nothing stands on after its end.
QString discardBy(const ledger::Outlook& so, chemistry::Instant now, const Wording& wording)
{
    const bool dated = so.batch.inUse() && so.assessment.discardBy;
    return dated ? aboutDayText(*so.assessment.discardBy, now, wording.locale) : QString();
}

struct NamedFigure {
    const char* name;
    Figure figure;
};

} // namespace

std::vector<FactorRow> consequenceRows(const ledger::Consequences& what, chemistry::Instant now,
                                       const Wording& wording)
{
    static constexpr NamedFigure kFigures[]{
        {QT_TRANSLATE_NOOP("Consequences", "Verdict"), verdict},
        {QT_TRANSLATE_NOOP("Consequences", "Films left"), filmsLeft},
        {QT_TRANSLATE_NOOP("Consequences", "Films done"), filmsDone},
        {QT_TRANSLATE_NOOP("Consequences", "Volume"), volume},
        {QT_TRANSLATE_NOOP("Consequences", "Next film's time"), nextTime},
        {QT_TRANSLATE_NOOP("Consequences", "Standing used"), standing},
        {QT_TRANSLATE_NOOP("Consequences", "Discard by"), discardBy},
    };
    std::vector<FactorRow> rows;
    bool changes = false;
    for (const NamedFigure& one : kFigures) {
        const QString none = QStringLiteral("–");
        const QString before = what.before ? one.figure(*what.before, now, wording) : none;
        const QString after = what.after ? one.figure(*what.after, now, wording) : none;
        if (before == after && one.figure != verdict && one.figure != filmsLeft)
            continue;
        if (before.isEmpty() && after.isEmpty())
            continue;
        const bool changed = before != after;
        changes = changes || changed;
        const QString from = before.isEmpty() ? none : before;
        const QString to = after.isEmpty() ? none : after;
        if (!what.before) { // of a bottle that comes there is nothing to compare with
            if (!after.isEmpty())
                rows.push_back({Words::tr(one.name), after, false});
            continue;
        }
        if (changed && one.figure == discardBy) { // two dates are too long for a line
            rows.push_back({Words::tr("Discard by, so far"), from, false});
            rows.push_back({Words::tr("Discard by, then"), to, true});
            continue;
        }
        rows.push_back({Words::tr(one.name),
                        changed ? Words::tr("%1 → %2", "before, after").arg(from, to) : to,
                        changed});
    }
    return changes ? rows : std::vector<FactorRow>();
}

ConsequenceCard::ConsequenceCard(QWidget* parent) : Card(tr("What follows"), parent)
{
    body()->addStretch(1);
}

void ConsequenceCard::clear()
{
    for (QWidget* widget : m_shown) {
        body()->removeWidget(widget);
        widget->deleteLater();
        widget->hide();
    }
    m_shown.clear();
    m_lines.clear();
}

void ConsequenceCard::addText(const QString& text, bool heading, bool refusal)
{
    auto* label = new PlainLabel(text, this);
    label->setWordWrap(true);
    if (heading)
        label->setFont(Theme::font(TextRole::Strong));
    else
        setTone(label, refusal ? Tone::Discard : Tone::Quiet);
    body()->insertWidget(static_cast<int>(m_shown.size()), label);
    m_shown.push_back(label);
    m_lines << text;
}

void ConsequenceCard::showFigures(const std::vector<BottleConsequences>& bottles,
                                  chemistry::Instant now, const Wording& wording)
{
    clear();
    if (bottles.empty())
        addText(tr("No figure changes."), false);
    for (const BottleConsequences& bottle : bottles) {
        addText(bottle.name, true);
        if (bottle.what.before && !bottle.what.after) {
            addText(tr("It would never have been mixed, and leaves the shelf."), false);
            continue;
        }
        const auto rows = consequenceRows(bottle.what, now, wording);
        if (rows.empty()) {
            addText(tr("No figure changes."), false);
            continue;
        }
        auto* figures = new FactorRows(this);
        figures->setRows(rows);
        body()->insertWidget(static_cast<int>(m_shown.size()), figures);
        m_shown.push_back(figures);
        for (const FactorRow& row : rows)
            m_lines << QStringLiteral("%1: %2").arg(row.label, row.value);
    }
    setAccessibleDescription(m_lines.join(u'\n'));
}

void ConsequenceCard::showText(const QString& text, bool refusal)
{
    clear();
    if (!text.isEmpty())
        addText(text, false, refusal);
    setAccessibleDescription(text);
}

} // namespace ullage::app
