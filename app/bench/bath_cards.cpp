#include "app/bench/bath_cards.h"

#include "app/bench/bench_words.h"
#include "app/bench/clearing_box.h"
#include "app/bench/plan_words.h"
#include "app/widgets/card.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/widgets/verdict_label.h"
#include "app/widgets/verdict_mark.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "core/ledger/pour.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPointer>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage::app
{

using formulary::Role;
using ledger::PlanProblemCode;

namespace
{

QLabel* words(const QString& text, Tone tone)
{
    auto* label = new PlainLabel(text);
    label->setWordWrap(true);
    setTone(label, tone);
    return label;
}

} // namespace

BathCards::BathCards(ledger::SteadyClock steady, QWidget* parent)
    : QWidget(parent), m_steady(std::move(steady)), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
}

void BathCards::show(const ledger::NextLoad& reckoning, const ledger::LoadWishes& wishes,
                     const Wording& wording)
{
    auto* cards = new QWidget;
    auto* column = new QVBoxLayout(cards);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    for (const ledger::TemplateStep& step : wishes.sheet.steps) {
        const auto place = ledger::placeOf(step.kind);
        if (!place)
            continue;
        if (const ledger::BathChoice* bath = reckoning.plan.bath(*place)) {
            if (bath->need.required || bath->need.second || !bath->candidates.empty())
                column->addWidget(card(*bath, reckoning, wishes, wording));
        } else {
            // Left out by choice: the way back is the same list.
            ledger::BathChoice none{
                .need = {.role = place->role, .required = false, .second = place->second}};
            column->addWidget(card(none, reckoning, wishes, wording));
        }
    }
    column->addStretch(1); // a card grows as gladly as a plain stretch
    if (m_cards) {
        m_cards->hide();
        m_cards->deleteLater(); // one of its lists may be sending this signal
    }
    m_cards = cards;
    m_column->addWidget(cards);
}

QWidget* BathCards::card(const ledger::BathChoice& bath, const ledger::NextLoad& so,
                         const ledger::LoadWishes& wishes, const Wording& wording)
{
    const ledger::BathPlace place = bath.need.place();
    auto* made = new Card(bathName(place.role, place.second));
    QVBoxLayout* body = made->body();
    const ledger::Judged* taken = so.taken(place);
    if (taken) {
        auto* head = new QHBoxLayout;
        auto* name = new PlainLabel(QString::fromStdString(taken->batch.name));
        name->setFont(Theme::font(TextRole::Heading));
        name->setObjectName(QStringLiteral("taken-%1").arg(bathName(place.role, place.second)));
        auto* verdict = new VerdictLabel;
        verdict->setLook(taken->assessment.shown);
        head->addWidget(name);
        head->addStretch(1);
        head->addWidget(verdict);
        body->addLayout(head);
        body->addWidget(words(bottleFacts(*taken, wording), Tone::Quiet));
        auto* pour = words(
            tr("Pour: %1")
                .arg(pourText(ledger::pourOf(bath.need, wishes.tank), wishes.temperature, wording)),
            Tone::Ink);
        pour->setObjectName(QStringLiteral("pour-%1").arg(bathName(place.role, place.second)));
        body->addWidget(pour);
    }
    const bool toldBelow =
        std::any_of(so.plan.problems.begin(), so.plan.problems.end(), [&](const auto& problem) {
            return problem.code == PlanProblemCode::NoBottle && problem.isOf(place);
        });
    if (taken || (bath.need.required && !toldBelow))
        body->addWidget(words(choiceText(bath), Tone::Ink));
    if (const QString next = nextBestText(bath, so, wording); !next.isEmpty())
        body->addWidget(words(next, Tone::Quiet));
    body->addWidget(alternatives(bath, so, wishes, wording));
    for (const ledger::PlanProblem& problem : so.plan.problems) {
        if (problem.isOf(place))
            body->addWidget(words(problemText(problem, so, wording),
                                  problem.blocks() ? Tone::Discard : Tone::Near));
    }
    addRemedies(body, bath, so, wishes, wording);
    if (const ledger::BathAfter* after = so.afterwards(place); after && after->filmsLeft)
        body->addWidget(
            words(tr("Afterwards: %1 left.").arg(filmsLeftText(*after->filmsLeft, wording)),
                  Tone::Quiet));
    return made;
}

QWidget* BathCards::alternatives(const ledger::BathChoice& bath, const ledger::NextLoad& so,
                                 const ledger::LoadWishes& wishes, const Wording& wording)
{
    const ledger::BathPlace place = bath.need.place();
    auto* list = new QComboBox;
    list->setAccessibleName(tr("Bottle for: %1").arg(bathName(place.role, place.second)));
    list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    list->addItem(tr("As proposed"), QString());
    QStringList spent;
    for (const ledger::Candidate& candidate : bath.candidates) {
        const QString text = candidateText(candidate, so, wording);
        if (candidate.hindrance == ledger::Hindrance::Discard)
            spent << text; // shown, never to be chosen
        else
            list->addItem(text, QString::fromStdString(so.judged[candidate.judged].batch.id));
    }
    const bool main = (place.role == Role::Developer || place.role == Role::Fixer) && !place.second;
    if (!main)
        list->addItem(tr("None from the shelf"), QString::fromLatin1(ledger::kNoBottle));
    const auto chosen = wishes.chosen.find(place);
    if (chosen != wishes.chosen.end())
        list->setCurrentIndex(std::max(0, list->findData(QString::fromStdString(chosen->second))));
    connect(list, &QComboBox::activated, this, [this, place, list](int index) {
        emit this->chosen(place, list->itemData(index).toString().toStdString());
    });
    if (list->count() < 2)
        list->hide(); // nothing to choose from
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(list);
    if (!spent.isEmpty())
        column->addWidget(words(tr("Not offered: %1").arg(spent.join(tr("; "))), Tone::Quiet));
    return box;
}

void BathCards::addRemedies(QVBoxLayout* body, const ledger::BathChoice& bath,
                            const ledger::NextLoad& so, const ledger::LoadWishes& wishes,
                            const Wording& wording)
{
    const ledger::BathPlace place = bath.need.place();
    for (const ledger::PlanProblem& problem : so.plan.problems) {
        if (problem.code == PlanProblemCode::ExchangeDue && problem.isOf(place))
            addExchange(body, so.judged[*problem.judged].batch.id);
    }
    // The one that is held back until somebody says that it is clear, or has tested it.
    const auto held = std::find_if(
        so.plan.problems.begin(), so.plan.problems.end(), [&](const ledger::PlanProblem& problem) {
            return (problem.code == PlanProblemCode::NotMarkedDissolved ||
                    problem.code == PlanProblemCode::TestFirst) &&
                   problem.isOf(place);
        });
    const ledger::Judged* bottle = so.taken(place);
    if (!bottle && held != so.plan.problems.end())
        bottle = &so.judged[*held->judged];
    if (!bottle)
        return;
    const std::string batch = bottle->batch.id;
    const QString name = QString::fromStdString(bottle->batch.name);
    const auto has = [&](PlanProblemCode code) {
        return std::any_of(so.plan.problems.begin(), so.plan.problems.end(),
                           [&](const auto& p) { return p.code == code && p.isOf(place); });
    };
    if (has(PlanProblemCode::NotMarkedDissolved)) {
        auto* clear = new QPushButton(tr("It is clear: mark it dissolved"));
        setButtonLook(clear, ButtonLook::Quiet);
        body->addWidget(clear, 0, Qt::AlignLeft);
        connect(clear, &QPushButton::clicked, this,
                [this, batch] { emit happened(batch, ledger::Dissolved{}); });
    }
    if (!has(PlanProblemCode::TestFirst))
        return;
    if (place.role == Role::Fixer) {
        // A leader may lie in the fixer while the films are typed: the watch goes on.
        QPointer<ClearingBox>& box = m_tests[batch];
        if (!box) {
            box = new ClearingBox(name, m_steady, wording);
            box->setTemperature(wishes.temperature);
            connect(box, &ClearingBox::tested, this,
                    [this, batch](const ledger::ClearingTested& test) {
                        m_tests.erase(batch);
                        emit happened(batch, test);
                    });
        }
        body->addWidget(box);
    } else {
        addLook(body, batch, name);
    }
}

void BathCards::addExchange(QVBoxLayout* body, const std::string& first)
{
    auto* exchange = new QPushButton(tr("Exchange the baths…"));
    exchange->setObjectName(QStringLiteral("exchange"));
    setButtonLook(exchange, ButtonLook::Quiet);
    body->addWidget(exchange, 0, Qt::AlignLeft);
    connect(exchange, &QPushButton::clicked, this, [this, first] { emit exchangeWanted(first); });
}

void BathCards::addLook(QVBoxLayout* body, const std::string& batch, const QString& name)
{
    body->addWidget(words(tr("Develop a piece of film leader in %1, in the light: deep black in "
                             "about the developing time is good.")
                              .arg(name),
                          Tone::Quiet));
    auto* row = new QHBoxLayout;
    for (const bool good : {true, false}) {
        auto* button = new QPushButton(good ? tr("Leader is black: passed") : tr("Weak: failed"));
        setButtonLook(button, ButtonLook::Quiet);
        row->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, batch, good] {
            emit happened(batch, ledger::Looked{good, "leader test"});
        });
    }
    row->addStretch();
    body->addLayout(row);
}

} // namespace ullage::app
