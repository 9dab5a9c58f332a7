#include "app/dialogs/top_up_offers.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"
#include "app/words/verdict_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

using chemistry::Films;
using chemistry::Millilitres;

namespace
{

// Of a bottle to take from: whether it holds the replenisher and not the solution itself.
constexpr int kIsReplenisher = Qt::UserRole + 1;

} // namespace

TopUpOffers::TopUpOffers(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(Space::kSmall);
    hide();
}

TopUpOffers::Line& TopUpOffers::lineFor(const std::string& batch)
{
    for (Line& line : m_lines) {
        if (line.topUp.batch == batch)
            return line;
    }
    auto* widget = new QWidget(this);
    Line line{{batch, {}, {}, {}, {}},
              widget,
              new QCheckBox(widget),
              new QComboBox(widget),
              new PlainLabel(widget)};
    auto* column = new QVBoxLayout(widget);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kTight);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kSmall);
    row->addWidget(line.take);
    row->addWidget(line.from);
    row->addStretch(1);
    column->addLayout(row);
    column->addWidget(line.note);
    line.take->setObjectName(QStringLiteral("topUp"));
    line.from->setObjectName(QStringLiteral("topUpFrom"));
    line.note->setWordWrap(true);
    line.note->setFont(Theme::font(TextRole::Small));
    setTone(line.note, Tone::Quiet);
    line.from->setEnabled(false);
    connect(line.take, &QCheckBox::toggled, line.from, &QWidget::setEnabled);
    m_column->addWidget(widget);
    m_lines.push_back(line);
    return m_lines.back();
}

void TopUpOffers::show(Line& line, const ledger::Judged& bottle, Films films,
                       const std::vector<ledger::Judged>& bottles, const Wording& wording)
{
    const auto& batch = bottle.batch;
    const QString name = QString::fromStdString(batch.name);
    const auto& solution = *batch.solution;
    line.take->setText(plainCaption(
        tr("Top up %1 with %2, from").arg(name, volumeText(line.topUp.volume, wording))));
    line.from->setAccessibleName(tr("What %1 is topped up from").arg(name));
    QString before = line.from->currentData().toString();
    {
        const QSignalBlocker quiet(line.from);
        line.from->clear();
        line.from->addItem(
            solution.replenisher.empty() ? tr("freshly mixed") : tr("its replenisher"), QString());
        for (const ledger::Judged& other : bottles) {
            const auto& from = other.batch;
            const bool replenisher = from.solution->id == solution.replenisher;
            if (from.id == batch.id || (from.solution->id != solution.id && !replenisher) ||
                from.volume < line.topUp.volume ||
                other.assessment.verdict == ledger::Verdict::Discard)
                continue;
            line.from->addItem(QString::fromStdString(from.name), QString::fromStdString(from.id));
            line.from->setItemData(line.from->count() - 1, replenisher, kIsReplenisher);
            if (replenisher && before.isEmpty() && !line.take->isChecked())
                before = QString::fromStdString(from.id); // kept in a bottle: drawn from that
        }
        line.from->setCurrentIndex(std::max(0, line.from->findData(before)));
    }
    QStringList notes{
        tr("%1 × %2 a film.", "films, volume")
            .arg(filmsText(films, wording), volumeText(*solution.replenishPerFilm, wording))};
    if (line.topUp.drawn.value() > 0)
        notes << tr("There is no room for all of it: %1 is poured off first.")
                     .arg(volumeText(line.topUp.drawn, wording));
    notes << restSentence(solution, wording);
    line.note->setText(notes.join(u' '));
}

void TopUpOffers::setRun(const std::vector<Bath>& baths, Films films,
                         const std::vector<ledger::Judged>& bottles, const Wording& wording)
{
    bool any = false;
    for (Line& line : m_lines) {
        line.widget->hide();
        line.topUp.volume = Millilitres(0);
    }
    for (const Bath& bath : baths) {
        const auto bottle =
            std::find_if(bottles.begin(), bottles.end(), [&](const ledger::Judged& judged) {
                return judged.batch.id == bath.batch;
            });
        if (bottle == bottles.end())
            continue;
        const auto offer = ledger::topUpAfter(bottle->batch, films, bath.lost);
        if (!offer)
            continue;
        Line& line = lineFor(bath.batch);
        line.topUp = *offer;
        line.topUp.airLeft = bath.airLeft;
        show(line, *bottle, films, bottles, wording);
        line.widget->show();
        any = true;
    }
    setVisible(any);
}

void TopUpOffers::clear()
{
    for (const Line& line : m_lines)
        delete line.widget;
    m_lines.clear();
    hide();
}

std::vector<ledger::RunTopUp> TopUpOffers::topUps() const
{
    std::vector<ledger::RunTopUp> all;
    for (const Line& line : m_lines) {
        if (line.topUp.volume.value() <= 0 || !line.take->isChecked())
            continue;
        ledger::RunTopUp topUp = line.topUp;
        const std::string bottle = line.from->currentData().toString().toStdString();
        if (line.from->currentData(kIsReplenisher).toBool()) {
            topUp.drawnFrom = bottle;
        } else if (!bottle.empty()) {
            topUp.from = bottle;
            topUp.solution.clear(); // from a bottle, and not of the replenisher
        }
        all.push_back(topUp);
    }
    return all;
}

} // namespace ullage::app
