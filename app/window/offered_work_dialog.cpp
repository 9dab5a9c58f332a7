#include "app/window/offered_work_dialog.h"

#include "app/cupboard/work_words.h"
#include "app/session/door.h"
#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/cupboard/work_series.h"

#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kListWidth = 520;
constexpr int kListHeight = 260;

struct OfferWords {
    Q_DECLARE_TR_FUNCTIONS(OfferedWork)
};

// Its name, and below it all that was understood.
QString offerText(const OfferedWork& offered, const Door& door)
{
    const ledger::Work& work = offered.work;
    const Wording wording = door.wording();
    const chemistry::Instant now = door.now();
    const auto next = cupboard::nextTimes(work, now, 1, wallClock());
    const chemistry::Instant at = next.empty() ? work.at : next.front();
    QStringList parts{momentText(at, now, wording.locale)};
    parts << (work.films ? filmsText(*work.films, wording)
                         : OfferWords::tr("number of films not given"));
    if (const auto developer = door.formulary()->solution(work.developer))
        parts << shownName(developer->name);
    parts << ruleWords(work.rule, wording.locale) << ruleEndWords(work.rule, now, wording.locale);
    if (offered.known)
        parts << OfferWords::tr("known already: changed");
    parts.removeAll(QString());
    return workName(work) + u'\n' + parts.join(QStringLiteral(" · "));
}

} // namespace

OfferedWorkDialog::OfferedWorkDialog(Door& door, std::vector<OfferedWork> works,
                                     const QString& notRead, QWidget* parent)
    : FormDialog(door.wording(), tr("Read a calendar"), parent), m_door(door),
      m_works(std::move(works)), m_list(new QListWidget(this))
{
    auto* about = new PlainLabel(tr("Which of these dates are film to develop? Those that name "
                                    "films or a solution are ticked."),
                                 this);
    about->setWordWrap(true);
    setTone(about, Tone::Quiet);
    body()->addWidget(about);
    m_list->setAccessibleName(tr("Dates of the calendar"));
    m_list->setWordWrap(true);
    m_list->setSpacing(Space::kTight / 2);
    m_list->setResizeMode(QListView::Adjust); // wrapped anew
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setMinimumSize(kListWidth, kListHeight);
    for (const OfferedWork& work : m_works) {
        auto* item = new QListWidgetItem(offerText(work, door), m_list);
        item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
        item->setCheckState(work.likely ? Qt::Checked : Qt::Unchecked);
    }
    m_list->setCurrentRow(0);
    body()->addWidget(m_list, 1);
    auto* buttons = new QWidget(this);
    auto* flow = new FlowLayout(buttons, Space::kSmall);
    for (const auto& [on, words] :
         {std::pair(true, tr("Tick &all")), std::pair(false, tr("Tick &none"))}) {
        auto* button = new QPushButton(words, buttons);
        setButtonLook(button, ButtonLook::Plain);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, [this, tick = on] { tickAll(tick); });
        flow->addWidget(button);
    }
    body()->addWidget(buttons);
    if (!notRead.isEmpty()) {
        auto* left = new PlainLabel(notRead, this);
        left->setWordWrap(true);
        setTone(left, Tone::Test);
        body()->addWidget(left);
    }
    connect(m_list, &QListWidget::itemChanged, this, &OfferedWorkDialog::countTicked);
    countTicked();
    m_list->setFocus();
}

void OfferedWorkDialog::tickAll(bool on)
{
    {
        const QSignalBlocker quiet(m_list);
        for (int row = 0; row < m_list->count(); ++row)
            m_list->item(row)->setCheckState(on ? Qt::Checked : Qt::Unchecked);
    }
    m_list->viewport()->update();
    countTicked();
}

std::vector<ledger::CupboardLine> OfferedWorkDialog::ticked() const
{
    std::vector<ledger::CupboardLine> lines;
    for (std::size_t i = 0; i < m_works.size(); ++i) {
        if (m_list->item(static_cast<int>(i))->checkState() == Qt::Checked)
            lines.emplace_back(m_works[i].work);
    }
    return lines;
}

void OfferedWorkDialog::countTicked()
{
    setDeed(tr("Take %Ln date(s) as work", nullptr, static_cast<int>(ticked().size())));
}

bool OfferedWorkDialog::fieldsAreFine()
{
    if (!ticked().empty())
        return true;
    setRefusal(tr("Tick at least one date, or close this."));
    return false;
}

Result<void> OfferedWorkDialog::act()
{
    return m_door.add(ticked()).map([](auto&&) {});
}

} // namespace ullage::app
