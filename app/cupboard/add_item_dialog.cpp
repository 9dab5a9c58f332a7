#include "app/cupboard/add_item_dialog.h"

#include "app/cupboard/cupboard_words.h"
#include "app/cupboard/item_form.h"
#include "app/words/cautions.h"
#include "app/words/shown_names.h"
#include "core/cupboard/barcode.h"
#include "core/formulary/field_of.h"
#include "core/ledger/entry_fields.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>

namespace ullage::app
{

namespace
{

std::string idIn(const ledger::ItemLine& line)
{
    return std::visit([](const auto& one) { return one.id; }, line);
}

} // namespace

AddItemDialog::AddItemDialog(Door& door, const ledger::CupboardState& state, QWidget* parent)
    : DeedDialog(door, tr("Add to the cupboard"), parent), m_state(state),
      m_code(new QLineEdit(this)), m_item(new ItemForm(door, m_state, this))
{
    m_code->setMaxLength(static_cast<int>(formulary::fieldOf(&ledger::Barcode::code).longest));
    m_code->setPlaceholderText(tr("typed, or from a scanner that types"));
    m_code->installEventFilter(this);
    addRow(QStringLiteral("code"), tr("Co&de on it, if it has one"), m_code);
    m_says = addText({});
    m_says->hide();
    connect(m_code, &QLineEdit::editingFinished, this, &AddItemDialog::readCode);
    build();
    setDeed(tr("Add"));
    m_code->setFocus();
}

AddItemDialog::AddItemDialog(Door& door, const ledger::CupboardState& state,
                             const ledger::ItemHere& here, QWidget* parent)
    : DeedDialog(door, tr("Edit %1").arg(itemName(here.item, *door.formulary(), door.wording())),
                 parent),
      m_state(state), m_replaces(idIn(here.line)), m_code(new QLineEdit(this)),
      m_item(new ItemForm(door, m_state, this))
{
    m_code->hide();
    build();
    m_item->setLine(here.line, false);
    m_item->hideCount();
}

void AddItemDialog::build()
{
    addWide(m_item);
    heed(m_item);
    addCautions(tr("Where it stands"),
                {Cautions::labelAndLock(), Cautions::foodBottles(), Cautions::packetFirst()});
}

// A scanner ends with Return, which would enter the form half filled.
bool AddItemDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_code && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            readCode();
            if (known())
                m_item->countField()->setFocus();
            return true;
        }
    }
    return DeedDialog::eventFilter(watched, event);
}

const ledger::Barcode* AddItemDialog::known() const
{
    return cupboard::kindOf(m_state.barcodes, m_code->text().toStdString());
}

void AddItemDialog::readCode()
{
    clearProblems();
    const std::string code = m_code->text().toStdString();
    m_says->setVisible(!cupboard::bareCode(code).empty());
    if (cupboard::bareCode(code).empty())
        return;
    if (cupboard::formOf(code) == cupboard::CodeForm::WrongDigit) {
        m_says->hide();
        showProblem(QStringLiteral("code"), tr("Code: the last digit of “%1” does not agree with "
                                               "the others. It was read or typed wrong.")
                                                .arg(m_code->text().trimmed()));
        return;
    }
    const ledger::Barcode* barcode = known();
    m_codeFills = barcode && fillBy(*barcode);
    m_says->setText(m_codeFills
                        ? tr("This code is known. The form is filled in by it.")
                        : tr("This code is new. It will stand for what is entered here, and fill "
                             "in the form the next time."));
}

// By what was entered last under it, or by the solution alone.
bool AddItemDialog::fillBy(const ledger::Barcode& code)
{
    if (const auto thing = m_state.things.find(code.of); thing != m_state.things.end()) {
        m_item->setLine(thing->second, true);
        return true;
    }
    const auto family = formulary().family(code.of);
    for (auto packet = m_state.packets.rbegin(); packet != m_state.packets.rend(); ++packet) {
        const bool ours = packet->id == code.of || packet->solution == code.of ||
                          std::find(family.begin(), family.end(), packet->solution) != family.end();
        // The amount that one adds tells a concentrate from powder.
        if (ours && (!code.amount || (*code.amount != 1) == ledger::isLiquid(*packet))) {
            m_item->setLine(*packet, true);
            if (code.amount)
                m_item->setAmount(*code.amount);
            return true;
        }
    }
    if (!formulary().solution(code.of))
        return false;
    m_item->setKind(code.amount && *code.amount != 1 ? ShelvedKind::Concentrate
                                                     : ShelvedKind::Powder);
    m_item->setSolution(code.of);
    if (code.amount)
        m_item->setAmount(*code.amount);
    return true;
}

bool AddItemDialog::restIsFine()
{
    if (cupboard::formOf(m_code->text().toStdString()) == cupboard::CodeForm::WrongDigit) {
        readCode();
        return false;
    }
    return m_item->restIsFine();
}

Result<void> AddItemDialog::act()
{
    std::vector<ledger::CupboardLine> lines;
    const std::string first = door().newId();
    for (int i = 0; i < m_item->count(); ++i) {
        std::visit(
            [&](auto line) {
                line.id = i == 0 ? first : door().newId();
                line.replaces = m_replaces;
                lines.emplace_back(std::move(line));
            },
            m_item->line());
    }
    const std::string code = cupboard::bareCode(m_code->text().toStdString());
    // One that stands for what was withdrawn since stands for this from now on.
    const ledger::Barcode* before = known();
    if (!code.empty() && !(before && m_codeFills)) {
        ledger::Barcode taught;
        taught.id = door().newId();
        taught.replaces = before ? before->id : std::string();
        taught.code = code;
        taught.of = m_item->solution().empty() ? first : m_item->solution();
        taught.amount = m_item->amount();
        lines.emplace_back(std::move(taught));
    }
    const auto done = door().add(std::move(lines));
    if (!done)
        return tl::unexpected(done.error());
    m_entered = QString::fromStdString(done->front());
    return {};
}

} // namespace ullage::app
