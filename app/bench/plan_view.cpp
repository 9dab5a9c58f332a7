#include "app/bench/plan_view.h"

#include "app/bench/bath_cards.h"
#include "app/bench/bench_words.h"
#include "app/bench/column_scroll.h"
#include "app/bench/plan_figures.h"
#include "app/bench/step_list.h"
#include "app/bench/tank_edit.h"
#include "app/bench/template_dialog.h"
#include "app/bench/wash_edit.h"
#include "app/dialogs/leaflet_time_edit.h"
#include "app/dialogs/times_apart_box.h"
#include "app/widgets/card.h"
#include "app/widgets/films_edit.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QShortcut>
#include <QSpinBox>
#include <QVBoxLayout>

#include <utility>

namespace ullage::app
{

namespace
{

// Narrower than this their words break after every few letters.
constexpr int kBottlesWidth = 240;
constexpr int kSheetWidth = 300;
constexpr int kLabelWidth = 112;
constexpr int kLabelDown = 14; // so that a label of one line stands beside its field's words

} // namespace

PlanView::PlanView(Door& host, BenchMemory& memory, ledger::SteadyClock steady, QWidget* parent)
    : QWidget(parent), m_host(&host), m_memory(&memory), m_steady(std::move(steady))
{
    // What is asked for scrolls as one, the bottles beside the load or, where it is narrow, below
    // it; the sheet and its button stay in sight.
    auto* asked = new QWidget;
    auto* both = new FoldingRow(asked);
    both->addColumn(loadSide(), 42);
    QWidget* bottles = bottleSide();
    bottles->setMinimumWidth(kBottlesWidth);
    both->addColumn(bottles, 33);
    QWidget* sheet = sheetSide();
    sheet->setMinimumWidth(kSheetWidth);
    auto* row = new FoldingRow(this);
    row->addColumn(new ColumnScroll(asked), 68);
    row->addColumn(sheet, 32);
    fillTemplates();
    connect(m_films, &FilmsEdit::changed, this, &PlanView::reckonNow);
    connect(m_tank, &TankEdit::changed, this, &PlanView::reckonNow);
    connect(m_temperature, &QuantityEdit::valueChanged, this, &PlanView::reckonNow);
    connect(m_base, &LeafletTimeEdit::changed, this, &PlanView::reckonNow);
    connect(m_base, &LeafletTimeEdit::dilutionPicked, this, [this](double parts) {
        const QSignalBlocker quiet(m_parts);
        m_parts->setValue(int(parts));
    });
    connect(m_apart, &TimesApartBox::ruled, m_base, &LeafletTimeEdit::rule);
    connect(m_apart, &TimesApartBox::splitWanted, this, &PlanView::splitByTime);
    connect(m_parts, &QSpinBox::valueChanged, this, &PlanView::reckonNow);
    connect(m_oneShot, &QCheckBox::toggled, this, [this] {
        m_onceSaid = true;
        reckonNow();
    });
    connect(m_tabular, &QCheckBox::toggled, this, &PlanView::reckonNow);
    connect(m_template, &QComboBox::currentIndexChanged, this, &PlanView::reckonNow);
    connect(m_wash, &WashEdit::changed, this, &PlanView::reckonNow);
    connect(m_start, &QPushButton::clicked, this, &PlanView::start);
    connect(&host, &Door::changed, this, [this] {
        if (isVisible()) // else when the page is seen
            refresh();
    });
    connect(m_baths, &BathCards::chosen, this,
            [this](ledger::BathPlace place, const std::string& batch) {
                if (place.role == formulary::Role::Developer)
                    m_onceSaid = false; // another bottle may be used otherwise
                if (batch.empty())
                    m_chosen.erase(place);
                else
                    m_chosen[place] = batch;
                reckonNow();
            });
    connect(m_baths, &BathCards::exchangeWanted, this, &PlanView::exchangeWanted);
    connect(m_baths, &BathCards::happened, this,
            [this](const std::string& batch, const ledger::Happening& what) {
                const auto done = m_host->record(batch, what, {m_host->now(), {}});
                if (!done)
                    emit refused(refusalText(done.error(), m_host->wording()));
            });
    refresh();
}

QWidget* PlanView::loadSide()
{
    const Wording wording = m_host->wording();
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    auto* films = new Card(tr("Films"));
    m_films = new FilmsEdit(wording);
    m_films->setNewFormat(m_memory->lastFormat());
    m_films->setFilms({});
    films->body()->addWidget(m_films);
    column->addWidget(films);
    m_apart = new TimesApartBox;
    column->addWidget(m_apart);

    auto* card = new Card(tr("Tank and time"));
    auto* form = new QGridLayout; // which gives words that wrap the height that they need
    form->setHorizontalSpacing(12);
    form->setVerticalSpacing(9);
    form->setColumnStretch(1, 1);
    int row = 0;
    const auto add = [&](const QString& name, QWidget* field) {
        auto* label = new PlainLabel(name);
        QWidget* keys = field;
        while (keys->focusProxy())
            keys = keys->focusProxy();
        label->setBuddy(keys);
        if (label->sizeHint().width() > kLabelWidth) { // it would take the fields' room
            label->setWordWrap(true);
            label->setMaximumWidth(kLabelWidth);
        }
        label->setMinimumHeight(field->fontMetrics().height() + kLabelDown);
        form->addWidget(label, row, 0, Qt::AlignTop);
        form->addWidget(field, row++, 1);
    };
    m_tank = new TankEdit(*m_memory, wording);
    m_temperature = new QuantityField<chemistry::Celsius>(QuantityKind::Temperature,
                                                          tr("Thermometer"), wording);
    m_temperature->setRange(0, 60);
    m_temperature->setRequired(true);
    m_temperature->setValue(20);
    m_temperature->setObjectName(QStringLiteral("thermometer"));
    m_temperature->setAccessibleName(tr("Thermometer"));
    m_base = new LeafletTimeEdit(
        [this](const std::string& solution, double parts) -> LeafletTimeEdit::Last {
            return {m_host->baseTimes(solution, parts), m_host->baseTimesFor(solution, parts)};
        },
        wording);
    m_parts = new QSpinBox;
    m_parts->setRange(0, 100);
    m_parts->setPrefix(QStringLiteral("1 + "));
    m_parts->setSpecialValueText(tr("stock, undiluted"));
    m_parts->setAccessibleName(tr("Dilution of the developer"));
    m_oneShot = new QCheckBox(tr("one-shot: developer is poured away"));
    m_tabular = new QCheckBox(tr("tabular grain: fixes longer"));
    add(tr("&Tank"), m_tank);
    add(tr("Ther&mometer"), m_temperature);
    add(tr("Leaflet time"), m_base);
    form->addWidget(m_base->forLabel(), row++, 1);
    add(tr("&Dilution"), m_parts);
    form->addWidget(m_oneShot, row++, 0, 1, 2);
    form->addWidget(m_tabular, row++, 0, 1, 2);
    card->body()->addLayout(form);
    column->addWidget(card);
    column->addStretch(1);
    return side;
}

QWidget* PlanView::bottleSide()
{
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    auto* split = new Card;
    split->setGround(Card::Ground::Calm);
    m_split = new PlainLabel;
    m_split->setWordWrap(true);
    auto* take = new QPushButton(tr("Take the first part now"));
    take->setObjectName(QStringLiteral("takeFirstPart"));
    setButtonLook(take, ButtonLook::Quiet);
    split->body()->addWidget(m_split);
    split->body()->addWidget(take, 0, Qt::AlignLeft);
    connect(take, &QPushButton::clicked, this, &PlanView::takeFirstPart);
    m_splitBox = split;
    column->addWidget(split);
    m_baths = new BathCards(m_steady);
    column->addWidget(m_baths, 1);
    return side;
}

QWidget* PlanView::sheetSide()
{
    auto* card = new Card(tr("Run sheet"));
    m_template = new QComboBox;
    m_template->setAccessibleName(tr("Template of the run sheet"));
    m_template->setObjectName(QStringLiteral("template"));
    m_template->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    auto* edit = new QPushButton(tr("Edit…"));
    edit->setAccessibleName(tr("Edit the template"));
    setButtonLook(edit, ButtonLook::Quiet);
    // One below the other: beside the button there is no room for a template's whole name.
    card->body()->addWidget(m_template);
    m_ask = new WhereFromButton;
    m_ask->setFigures([this] {
        const auto* known = m_base->chosen();
        return sheetFigures(wishes(), m_next, m_wash->plan(), known ? known->source : QString(),
                            m_host->wording());
    });
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    m_print = new QPushButton(tr("Print…"));
    m_print->setObjectName(QStringLiteral("printSheet"));
    m_print->setAccessibleName(tr("Print the run sheet"));
    setButtonLook(m_print, ButtonLook::Quiet);
    row->addWidget(edit);
    row->addWidget(m_print);
    row->addStretch(1);
    row->addWidget(m_ask);
    card->body()->addLayout(row);
    m_wash = new WashEdit(m_host->wording());
    card->body()->addWidget(m_wash);
    m_list = new StepList;
    m_first = new PlainLabel;
    m_first->setObjectName(QStringLiteral("firstToDo"));
    m_first->setWordWrap(true);
    m_first->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    setTone(m_first, Tone::Quiet);
    card->body()->addWidget(m_first, 1);
    m_note = new PlainLabel;
    m_note->setWordWrap(true);
    setTone(m_note, Tone::Quiet);
    auto* steps = new QWidget;
    auto* stepColumn = new QVBoxLayout(steps);
    stepColumn->setContentsMargins(0, 0, 0, 0);
    stepColumn->setSpacing(Space::kSmall);
    stepColumn->addWidget(m_list, 1);
    stepColumn->addWidget(m_note);
    m_steps = new ColumnScroll(steps, FadeGround::Card);
    card->body()->addWidget(m_steps, 1);
    m_problem = new PlainLabel;
    m_problem->setWordWrap(true);
    setTone(m_problem, Tone::Discard);
    card->body()->addWidget(m_problem);
    m_start = new QPushButton(tr("To the clock"));
    m_start->setObjectName(QStringLiteral("start"));
    m_start->setProperty("tall", true);
    setButtonLook(m_start, ButtonLook::Primary);
    card->body()->addWidget(m_start);
    connect(edit, &QPushButton::clicked, this, &PlanView::editTemplate);
    connect(m_print, &QPushButton::clicked, this, &PlanView::printWanted);
    auto* printing = new QShortcut(QKeySequence::Print, this);
    printing->setContext(Qt::WidgetWithChildrenShortcut);
    connect(printing, &QShortcut::activated, this, &PlanView::printWanted);
    return card;
}

void PlanView::fillTemplates()
{
    const QSignalBlocker quiet(m_template);
    m_templates = m_memory->templates();
    m_template->clear();
    for (const ledger::RunTemplate& sheet : m_templates)
        m_template->addItem(templateName(sheet));
    m_template->setCurrentIndex(std::max(0, m_template->findText(m_memory->lastTemplate())));
    const QString& last = m_memory->lastTemplate();
    if (last.isEmpty())
        m_template->setCurrentIndex(int(m_templates.size() - ledger::usualTemplates().size()));
}

void PlanView::editTemplate()
{
    TemplateDialog dialog(m_templates[std::size_t(m_template->currentIndex())], m_host->wording(),
                          this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (dialog.forgotten())
        m_memory->forgetTemplate(dialog.sheet().name);
    else
        m_memory->remember(dialog.sheet());
    m_memory->setLastTemplate(dialog.forgotten() ? QString() : templateName(dialog.sheet()));
    fillTemplates();
    reckonNow();
}

} // namespace ullage::app
