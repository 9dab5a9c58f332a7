// What the dialog says of the batch before it is mixed, and the mixing itself.
#include "app/dialogs/found_form.h"
#include "app/dialogs/mix_dialog.h"
#include "app/widgets/card.h"
#include "app/widgets/factor_rows.h"
#include "app/words/error_words.h"
#include "app/words/factor_row.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/ledger/deed_events.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace ullage::app
{

void MixDialog::showPreview(const ledger::MixPreview& preview)
{
    const auto now = door().now();
    m_become->setTitle(tr("It will become %1").arg(m_name->text().trimmed()));
    m_becomeWhat->setText(tr("%1, %2").arg(shownName(solution()->name),
                                           volumeText(*m_volume->quantity(), wording())));
    std::vector<FactorRow> rows;
    const QString films = preview.films ? filmCountText(preview.films->value(), wording().locale)
                          : preview.atLeast ? tr("not known")
                                            : tr("no figure");
    rows.push_back(
        {filmsBefore() || preview.atLeast ? tr("Films left") : tr("Films"),
         preview.films && preview.atLeast ? tr("at most %1", "films").arg(films) : films});
    if (solution()->role == formulary::Role::Developer) {
        const auto timed = [&](const std::optional<chemistry::Seconds>& time, double factor) {
            const QString text = time ? timeText(*time, TimeStep::FiveSeconds)
                                      : factorText(factor, wording().locale);
            return preview.atLeast ? tr("at least %1", "time").arg(text) : text;
        };
        const QString twenty = shortTemperatureText(chemistry::Celsius(20), wording());
        rows.push_back({preview.atLeast ? (preview.firstTime ? tr("Next film at %1").arg(twenty)
                                                             : tr("Next film's time"))
                                        : (preview.firstTime ? tr("First film at %1").arg(twenty)
                                                             : tr("First film's time")),
                        timed(preview.firstTime, preview.firstFactor)});
        if (preview.tenthFactor)
            rows.push_back({preview.tenthTime ? tr("Tenth film") : tr("Tenth film's time"),
                            timed(preview.tenthTime, *preview.tenthFactor)});
    }
    if (preview.keepsUntil)
        rows.push_back({tr("Keeps, full and closed"),
                        tr("to %1").arg(dayText(*preview.keepsUntil, now, wording().locale))});
    if (preview.discardBy)
        rows.push_back(
            {tr("In this bottle"),
             tr("to %1").arg(preview.discardBy == preview.keepsUntil
                                 ? dayText(*preview.discardBy, now, wording().locale)
                                 : aboutDayText(*preview.discardBy, now, wording().locale))});
    if (!preview.keepsUntil)
        rows.push_back({tr("Keeps"), preview.atLeast ? tr("not known") : tr("no figure")});
    m_rows->setRows(rows);
}

QStringList MixDialog::warningsFor(const Result<ledger::MixPreview>& preview) const
{
    QStringList warnings;
    if (!preview)
        warnings << errorSentence(preview.error(), wording());
    const std::string chosen = m_vessel->currentData().toString().toStdString();
    for (const Bottle& bottle : door().bottles()) {
        // Whichever of the vessel's lines it was put there by.
        const auto now = formulary().vesselNow(bottle.batch.vessel->id);
        if (now && now->id == chosen)
            warnings << tr("%1 still holds %2.")
                            .arg(shownName(bottle.batch.vessel->name),
                                 QString::fromStdString(bottle.batch.name));
    }
    if (preview && preview->bottleCostsTime())
        warnings << tr("In this bottle it keeps about %1, not the published %2: the air in it and "
                       "what its wall and cap let through take the rest. A full glass bottle keeps "
                       "longest.")
                        .arg(keepingText(*preview->inThisBottle, wording().locale),
                             keepingText(*solution()->keeping.full, wording().locale));
    if (m_taken.contains(m_name->text().trimmed(), Qt::CaseInsensitive))
        warnings << tr("There is or was another bottle named %1.").arg(m_name->text().trimmed());
    return warnings;
}

bool MixDialog::restIsFine()
{
    if (!solution()) {
        showProblem(QStringLiteral("solution"), tr("Solution: choose one."));
        return false;
    }
    if (m_name->text().trimmed().isEmpty()) {
        showProblem(QStringLiteral("batch-name"), tr("Name on the label: a name is needed."));
        return false;
    }
    if (newVessel() && m_new.name->text().trimmed().isEmpty()) {
        showProblem(QStringLiteral("name"), tr("Name of the new bottle: a name is needed."));
        return false;
    }
    if (m_found->isChecked() && !m_foundForm->isFine(moment()))
        return false;
    return m_littleQuestion.sure(this, *m_volume->quantity(), *vessel(), wording());
}

ledger::NewBatch MixDialog::newBatch(const std::string& vessel) const
{
    ledger::NewBatch batch{solution()->id,
                           vessel,
                           m_volume->quantity().value_or(chemistry::Millilitres()),
                           m_name->text().trimmed().toStdString(),
                           {},
                           m_found->isChecked(),
                           m_dissolved->isChecked() && !m_dissolved->isHidden()};
    const ledger::KnownBefore known = knownBefore();
    batch.filmsBefore = known.filmsBefore;
    if (const int at = m_packet->currentData().toInt(); at >= 0 && !batch.historyUnknown) {
        const ledger::Packet& packet = m_packets[static_cast<std::size_t>(at)];
        batch.packet = packet.id;
        if (const auto taken = ledger::liquidFor(ledger::itemOf(packet), batch.volume))
            batch.takes.push_back({packet.id, *taken});
    }
    batch.mixedOn = known.mixedOn;
    batch.assumed = known.assumed;
    return batch;
}

std::optional<std::vector<ledger::Event>> MixDialog::wouldEnter() const
{
    if (!solution() || !m_volume->value() || newVessel() || !vessel())
        return std::nullopt;
    const auto newId = wouldBeIds();
    return ledger::eventsOf(newBatch(vessel()->id), newId(), {moment(), {}}, newId);
}

QString MixDialog::nothingFollows() const
{
    return newVessel() ? tr("What follows in a new bottle is seen once it is entered.")
                       : DeedDialog::nothingFollows();
}

Result<void> MixDialog::act()
{
    auto into = *vessel();
    if (newVessel())
        into.id = door().newId();
    if (const auto fits = ledger::previewMix(*solution(), into, *m_volume->quantity(), moment());
        !fits)
        return tl::unexpected(fits.error());
    const ledger::NewBatch batch = newBatch(into.id);
    // A new bottle comes in with what is in it, or not at all.
    const auto done = newVessel() ? door().mixInto(into, batch, {moment(), {}})
                                  : door().mix(batch, {moment(), {}});
    if (!done)
        return tl::unexpected(done.error());
    m_mixed = QString::fromStdString(*done);
    return {};
}

} // namespace ullage::app
