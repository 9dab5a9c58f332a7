#include "app/daybook/correct_thing_dialog.h"

#include "app/widgets/quantity_edit.h"
#include "app/words/film_words.h"
#include "app/words/quantity_words.h"
#include "core/formulary/field_of.h"
#include "core/ledger/cupboard_state.h"
#include "core/ledger/event_fields.h"
#include "core/ledger/line_description.h"

#include <QComboBox>
#include <QLineEdit>

#include <algorithm>
#include <limits>

namespace ullage::app
{

using namespace ledger;
using formulary::fieldOf;

namespace
{

std::string wordsIn(const QLineEdit* line) { return line->text().trimmed().toStdString(); }

// What an amount of it is counted in: by every id that it had, used up or not.
struct Counting {
    QuantityKind kind = QuantityKind::Number;
    QString unit;
};
Counting countingOf(const std::string& item, Door& door)
{
    const auto state = door.cupboard();
    if (!state)
        return {};
    const auto packet = std::find_if(state->packets.begin(), state->packets.end(),
                                     [&](const Packet& one) { return one.id == item; });
    if (packet != state->packets.end() && isLiquid(*packet))
        return {QuantityKind::Volume, unitText(QuantityKind::Volume, door.wording())};
    if (packet != state->packets.end())
        return {QuantityKind::Number, CorrectThingDialog::tr("packets")};
    const auto thing = state->things.find(item);
    if (thing == state->things.end())
        return {};
    const auto* supply = std::get_if<Supply>(&thing->second);
    return {QuantityKind::Number,
            supply ? QString::fromStdString(supply->unit) : CorrectThingDialog::tr("g")};
}

} // namespace

// Adds the fields of an event and says how they are read.
struct CorrectThingDialog::Fields {
    using Now = std::function<std::optional<Happening>()>;

    CorrectThingDialog& dialog;
    FieldForm& form;

    QLineEdit* words(const formulary::FieldDescription& is, const QString& label,
                     const std::string& text) const
    {
        auto* line = form.addWords(is, label);
        line->setText(QString::fromStdString(text));
        return line;
    }

    Now operator()(const OpenedPacket& what) const
    {
        return [what] { return Happening(what); };
    }
    Now operator()(const Taken& what) const { return amount(what, true); }
    Now operator()(const Counted& what) const { return amount(what, false); }
    Now operator()(const ThrownAway& what) const
    {
        auto* why = words(fieldOf(&ThrownAway::why), tr("Thrown away, &why"), what.why);
        return [what, why] { return Happening(ThrownAway{what.item, wordsIn(why)}); };
    }
    Now operator()(const PouredIn& what) const
    {
        auto* volume =
            form.addFigure<chemistry::Millilitres>(fieldOf(&PouredIn::volume), tr("&Volume"));
        volume->setQuantity(what.volume);
        return [what, volume]() -> std::optional<Happening> {
            if (!volume->quantity())
                return std::nullopt;
            return PouredIn{what.container, *volume->quantity(), what.from};
        };
    }
    Now operator()(const HandedOver& what) const
    {
        auto* to = words(fieldOf(&HandedOver::to), tr("&Who took it"), what.to);
        auto* volume = form.addFigure<chemistry::Millilitres>(fieldOf(&HandedOver::volume),
                                                              tr("&Volume, if not all of it"));
        volume->setQuantity(what.volume);
        auto* document = words(fieldOf(&HandedOver::document), tr("&Document"), what.document);
        return [=]() -> std::optional<Happening> {
            if (!volume->isValid())
                return std::nullopt;
            return HandedOver{what.container, wordsIn(to), volume->quantity(), wordsIn(document)};
        };
    }
    Now operator()(const TestAsked& what) const
    {
        auto* mark = new QComboBox(&form);
        for (std::size_t i = 0; i < kFilmFaultCodes.size(); ++i)
            mark->addItem(filmFaultTitle(static_cast<FilmFault>(i)));
        mark->setCurrentIndex(static_cast<int>(what.mark));
        form.addRow(QStringLiteral("mark"), tr("Because &negatives came out"), mark);
        return [what, mark] {
            TestAsked now = what;
            now.mark = static_cast<FilmFault>(mark->currentIndex());
            now.asNote = false;
            return Happening(now);
        };
    }
    template <class Other>
    Now operator()(const Other&) const
    {
        return {}; // isOfThings() does not hold
    }

private:
    template <class What>
    Now amount(const What& what, bool some) const
    {
        QuantityEdit* edit = dialog.addAmount(what.item, what.amount);
        edit->setRange(some ? std::numeric_limits<double>::min() : 0, kMostAmount);
        return [what, edit]() -> std::optional<Happening> {
            if (!edit->value())
                return std::nullopt;
            What now = what;
            now.amount = *edit->value();
            return now;
        };
    }
};

bool isOfThings(const Event& event)
{
    const Subject subject = subjectOf(event);
    return subject == Subject::Item || subject == Subject::Container ||
           std::holds_alternative<TestAsked>(event.what);
}

CorrectThingDialog::CorrectThingDialog(Door& door, const QString& what, std::vector<Event> entered,
                                       QWidget* parent)
    : CorrectingDialog(door, what, std::move(entered), parent),
      m_fields(new FieldForm(wording(), this))
{
    addKinds({HappeningKind::Film}, {}); // none that has a form
    m_now = std::visit(Fields{*this, *m_fields}, this->entered().front().what);
    addWide(m_fields);
    heed(m_fields);
    WhenEdit* when = addWhenAndWhy();
    connect(when, &WhenEdit::changed, this, &CorrectThingDialog::lookAheadSoon);
    if (!batch().empty()) // of the Cupboard nothing is told ahead
        showFollows(Follows::Always);
    const auto fields = m_fields->findChildren<QWidget*>();
    const auto first = std::find_if(fields.begin(), fields.end(), [](const QWidget* field) {
        return field->focusPolicy() & Qt::TabFocus;
    });
    if (first != fields.end())
        (*first)->setFocus();
}

QuantityEdit* CorrectThingDialog::addAmount(const std::string& item, double amount)
{
    const Counting counting = countingOf(item, door());
    const QString label = tr("How &much");
    const QString words = counting.unit.isEmpty()
                              ? label
                              : tr("%1, %2", "figure, its unit").arg(label, counting.unit);
    auto* edit = new QuantityEdit(counting.kind, QString(words).remove(u'&'), wording(), this);
    edit->setRequired(true);
    edit->setValue(amount);
    m_fields->addRow(QStringLiteral("amount"), words, edit, Width::Half);
    return edit;
}

std::optional<std::vector<Event>> CorrectThingDialog::instead() const
{
    auto what = m_now();
    if (!what)
        return std::nullopt;
    Event now = entered().front();
    now.id = wouldBeIds()();
    now.entry = 0;
    now.at = correctedMoment();
    now.what = std::move(*what);
    return std::vector{std::move(now)};
}

} // namespace ullage::app
