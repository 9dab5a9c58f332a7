#include "app/cupboard/item_form.h"

#include "app/cupboard/cupboard_words.h"
#include "app/widgets/count_box.h"
#include "app/widgets/moment_field.h"
#include "app/widgets/plain_text.h"
#include "app/words/moment_text.h"
#include "app/words/shown_names.h"
#include "core/formulary/field_of.h"
#include "core/ledger/entry_fields.h"

#include <QComboBox>
#include <QLineEdit>

namespace ullage::app
{

using formulary::fieldOf;
using ledger::Chemical;
using ledger::Packet;
using ledger::Supply;

namespace
{

constexpr int kMostAtOnce = 200;

// A day as the journal has it; empty for none.
std::string isoDay(const MomentField& field)
{
    return field.isEmpty() ? std::string() : field.date().toString(Qt::ISODate).toStdString();
}

void showDay(MomentField& field, const std::string& day)
{
    const QDate date = QDate::fromString(QString::fromStdString(day), Qt::ISODate);
    if (date.isValid())
        field.setShown(date);
    else
        field.showNone();
}

std::string wordsOf(const QLineEdit& field) { return field.text().trimmed().toStdString(); }

} // namespace

ItemForm::ItemForm(Door& door, const ledger::CupboardState& state, QWidget* parent)
    : FieldForm(door.wording(), parent), m_door(door), m_state(state), m_kind(new QComboBox(this)),
      m_solution(new QComboBox(this)), m_count(new CountBox(tr("How many"), 1, kMostAtOnce, this))
{
    for (const auto& [kind, words] :
         {std::pair(ShelvedKind::Powder, tr("Packet of powder")),
          std::pair(ShelvedKind::Concentrate, tr("Liquid concentrate")),
          std::pair(ShelvedKind::Chemical, tr("Raw chemical, by weight")),
          std::pair(ShelvedKind::Supply, tr("Supplies: filters, gloves, labels"))})
        m_kind->addItem(words, static_cast<int>(kind));
    addRow(QStringLiteral("kind"), tr("&Kind"), m_kind);
    for (const auto& solution : m_door.formulary()->currentSolutions())
        m_solution->addItem(plainCaption(shownName(solution->name)),
                            QString::fromStdString(solution->id));
    addRow(QStringLiteral("solution"), tr("What &it makes"), m_solution);
    m_name = addWords(fieldOf(&Chemical::name), tr("&Name"), Width::Whole);
    // What is hidden leaves its half of the line: the left one of each pair stands alone then.
    m_makes = addFigure<chemistry::Millilitres>(fieldOf(&Packet::makes), tr("&All of it makes"));
    m_volume = addFigure<chemistry::Millilitres>(fieldOf(&Packet::volume), tr("&Bottle holds"));
    m_keepsOpened = addFigure<chemistry::Days>(fieldOf(&Packet::keepsOpened),
                                               tr("Keeps once &opened, days"), Width::Whole);
    m_grams = addQuantity(fieldOf(&Chemical::grams), tr("&Grams"));
    m_cas = addWords(fieldOf(&Chemical::cas), tr("&CAS number"), Width::Half);
    m_hazards =
        addWords(fieldOf(&Chemical::hazards), tr("Ha&zard statements on its label"), Width::Whole);
    m_hazards->setPlaceholderText(tr("H302, H317"));
    m_amount = addQuantity(fieldOf(&Supply::amount), tr("Ho&w much"));
    m_unit = addWords(fieldOf(&Supply::unit), tr("Coun&ted in"), Width::Half);
    m_unit->setPlaceholderText(tr("pieces, pairs, sheets…"));
    m_bought = addDay(fieldOf(&Packet::bought), tr("Boug&ht"));
    addRow(QStringLiteral("count"), tr("How &many"), m_count, Width::Half);
    m_useBy = addDay(fieldOf(&Packet::useBy), tr("&Use by"));
    m_useBy->setLooksAhead();
    m_lot = addWords(fieldOf(&Packet::lot), tr("&Lot"), Width::Half);
    m_cost = addWords(fieldOf(&Packet::cost), tr("&Price of one"), Width::Half);
    m_currency = addWords(fieldOf(&Packet::currency), tr("Cu&rrency"), Width::Half);
    m_place = addWords(fieldOf(&Packet::place), tr("Wh&ere it stands"), Width::Whole);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &ItemForm::showKind);
    connect(m_solution, &QComboBox::currentIndexChanged, this, &ItemForm::offerLast);
    m_bought->setShown(localDate(m_door.now()));
    if (!m_state.packets.empty())
        m_currency->setText(QString::fromStdString(m_state.packets.back().currency));
    else
        m_currency->setText(wording().locale.currencySymbol(QLocale::CurrencyIsoCode));
    showKind();
    offerLast();
}

MomentField* ItemForm::addDay(const formulary::FieldDescription& is, const QString& label)
{
    auto* day = new MomentField(
        MomentField::Asks::Day, [this] { return m_door.now(); }, wording().locale, this);
    day->setPlaceholderText(tr("not known"));
    day->setMayBeEmpty();
    addRow(QString::fromUtf8(is.name.data(), static_cast<qsizetype>(is.name.size())), label, day,
           Width::Half);
    return day;
}

ShelvedKind ItemForm::kind() const
{
    return static_cast<ShelvedKind>(m_kind->currentData().toInt());
}

void ItemForm::setKind(ShelvedKind kind)
{
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(kind)));
}

void ItemForm::showKind()
{
    const ShelvedKind is = kind();
    const bool packet = is == ShelvedKind::Powder || is == ShelvedKind::Concentrate;
    const bool chemical = is == ShelvedKind::Chemical;
    setRowVisible(QStringLiteral("solution"), packet);
    setRowVisible(QStringLiteral("makes_ml"), packet);
    setRowVisible(QStringLiteral("lot"), packet);
    setRowVisible(QStringLiteral("volume_ml"), is == ShelvedKind::Concentrate);
    setRowVisible(QStringLiteral("opened_days"), is == ShelvedKind::Concentrate);
    setRowVisible(QStringLiteral("name"), !packet);
    setRowVisible(QStringLiteral("grams"), chemical);
    setRowVisible(QStringLiteral("cas"), chemical);
    setRowVisible(QStringLiteral("hazards"), chemical);
    setRowVisible(QStringLiteral("amount"), is == ShelvedKind::Supply);
    setRowVisible(QStringLiteral("unit"), is == ShelvedKind::Supply);
    setRowVisible(QStringLiteral("count"), !m_countHidden);
    offerLast();
    emit kindChanged();
}

// What was bought of it last is most likely bought again.
void ItemForm::offerLast()
{
    const bool liquid = kind() == ShelvedKind::Concentrate;
    const std::string wanted = solution();
    for (auto packet = m_state.packets.rbegin(); packet != m_state.packets.rend(); ++packet) {
        if (packet->solution == wanted && ledger::isLiquid(*packet) == liquid) {
            m_makes->setQuantity(packet->makes);
            m_volume->setQuantity(packet->volume);
            m_keepsOpened->setQuantity(packet->keepsOpened);
            return;
        }
    }
}

void ItemForm::setSolution(const std::string& solution)
{
    for (const std::string& id : m_door.formulary()->family(solution)) {
        if (const int found = m_solution->findData(QString::fromStdString(id)); found >= 0)
            m_solution->setCurrentIndex(found);
    }
}

std::string ItemForm::solution() const
{
    const bool packet = kind() == ShelvedKind::Powder || kind() == ShelvedKind::Concentrate;
    return packet ? m_solution->currentData().toString().toStdString() : std::string();
}

void ItemForm::setAmount(double amount)
{
    switch (kind()) {
    case ShelvedKind::Powder:
        break; // one is one
    case ShelvedKind::Concentrate:
        return m_volume->setValue(amount);
    case ShelvedKind::Chemical:
        return m_grams->setValue(amount);
    case ShelvedKind::Supply:
        return m_amount->setValue(amount);
    }
}

std::optional<double> ItemForm::amount() const
{
    switch (kind()) {
    case ShelvedKind::Powder:
        return 1;
    case ShelvedKind::Concentrate:
        return m_volume->value();
    case ShelvedKind::Chemical:
        return m_grams->value();
    case ShelvedKind::Supply:
        break;
    }
    return m_amount->value();
}

int ItemForm::count() const { return m_countHidden ? 1 : m_count->value(); }

QWidget* ItemForm::countField() const { return m_count; }

void ItemForm::hideCount()
{
    m_countHidden = true;
    m_kind->setEnabled(false);
    showKind();
}

std::optional<ledger::Decimal> ItemForm::cost() const
{
    QString text = m_cost->text().trimmed();
    const QString point = wording().locale.decimalPoint();
    text.replace(point, QStringLiteral("."));
    return ledger::Decimal::from(text.toStdString());
}

bool ItemForm::restIsFine()
{
    bool fine = true;
    if (!m_cost->text().trimmed().isEmpty() && !cost()) {
        showProblem(QStringLiteral("cost"),
                    tr("Price of one: “%1” is not an amount of money. Write it like %2.")
                        .arg(m_cost->text().trimmed(), wording().locale.toString(9.8, 'f', 2)));
        fine = false;
    }
    for (const auto& [name, day] : {std::pair("use_by", m_useBy), std::pair("bought", m_bought)}) {
        if (day->problem().isEmpty())
            continue;
        showProblem(QLatin1String(name), day->problem());
        fine = false;
    }
    if (!m_name->isHidden() && m_name->text().trimmed().isEmpty()) {
        showProblem(QStringLiteral("name"), tr("Name: say what it is."));
        fine = false;
    }
    if (!m_count->isHidden() && !m_count->problem().isEmpty()) {
        showProblem(QStringLiteral("count"), m_count->problem());
        fine = false;
    }
    return fine;
}

template <class Line>
void ItemForm::take(Line& line) const
{
    line.bought = isoDay(*m_bought);
    line.useBy = isoDay(*m_useBy);
    line.cost = cost();
    line.currency = line.cost ? wordsOf(*m_currency) : std::string();
    line.place = wordsOf(*m_place);
}

ledger::ItemLine ItemForm::line() const
{
    switch (kind()) {
    case ShelvedKind::Powder:
    case ShelvedKind::Concentrate: {
        Packet packet;
        const bool liquid = kind() == ShelvedKind::Concentrate;
        packet.solution = solution();
        packet.form = liquid ? formulary::Form::Liquid : formulary::Form::Powder;
        packet.makes = m_makes->quantity();
        packet.lot = wordsOf(*m_lot);
        if (liquid) {
            packet.volume = m_volume->quantity();
            packet.keepsOpened = m_keepsOpened->quantity();
        }
        take(packet);
        return packet;
    }
    case ShelvedKind::Chemical: {
        Chemical chemical;
        chemical.name = wordsOf(*m_name);
        chemical.cas = wordsOf(*m_cas);
        chemical.grams = m_grams->value();
        for (const QString& one : m_hazards->text().split(u',', Qt::SkipEmptyParts)) {
            if (!one.trimmed().isEmpty())
                chemical.hazards.push_back(one.trimmed().toStdString());
        }
        take(chemical);
        return chemical;
    }
    case ShelvedKind::Supply:
        break;
    }
    Supply supply;
    supply.name = wordsOf(*m_name);
    supply.unit = wordsOf(*m_unit);
    supply.amount = m_amount->value();
    take(supply);
    return supply;
}

// The day, the lot and the price are those of one purchase.
template <class Line>
void ItemForm::show(const Line& line, bool again)
{
    m_place->setText(QString::fromStdString(line.place));
    if (!line.currency.empty())
        m_currency->setText(QString::fromStdString(line.currency));
    if (line.cost) {
        QString cost = QString::fromStdString(line.cost->text());
        m_cost->setText(cost.replace(u'.', wording().locale.decimalPoint()));
    }
    if (again)
        return;
    showDay(*m_useBy, line.useBy);
    showDay(*m_bought, line.bought);
}

void ItemForm::setLine(const ledger::ItemLine& line, bool again)
{
    if (const auto* packet = std::get_if<Packet>(&line)) {
        setKind(ledger::isLiquid(*packet) ? ShelvedKind::Concentrate : ShelvedKind::Powder);
        setSolution(packet->solution);
        m_makes->setQuantity(packet->makes);
        m_volume->setQuantity(packet->volume);
        m_keepsOpened->setQuantity(packet->keepsOpened);
        if (!again)
            m_lot->setText(QString::fromStdString(packet->lot));
        show(*packet, again);
    } else if (const auto* chemical = std::get_if<Chemical>(&line)) {
        setKind(ShelvedKind::Chemical);
        m_name->setText(QString::fromStdString(chemical->name));
        m_cas->setText(QString::fromStdString(chemical->cas));
        m_grams->setValue(chemical->grams);
        QStringList hazards;
        for (const std::string& one : chemical->hazards)
            hazards << QString::fromStdString(one);
        m_hazards->setText(hazards.join(QStringLiteral(", ")));
        show(*chemical, again);
    } else if (const auto* supply = std::get_if<Supply>(&line)) {
        setKind(ShelvedKind::Supply);
        m_name->setText(QString::fromStdString(supply->name));
        m_unit->setText(QString::fromStdString(supply->unit));
        m_amount->setValue(supply->amount);
        show(*supply, again);
    }
}

} // namespace ullage::app
