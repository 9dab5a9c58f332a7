#include "app/dialogs/times_apart_box.h"

#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

QString nameOf(const formulary::FilmWanted& film, const Wording& wording)
{
    const QString name = QString::fromStdString(film.name);
    return film.exposureIndex ? TimesApartBox::tr("%1 · EI %2", "film, exposure index")
                                    .arg(name, numberText(*film.exposureIndex, 1, wording.locale))
                              : name;
}

// In a button: a name may be as long as people like.
QString shortName(const formulary::FilmWanted& film, const Wording& wording)
{
    constexpr qsizetype kMost = 28;
    const QString name = nameOf(film, wording);
    return name.size() <= kMost ? name : name.left(kMost - 1).trimmed() + u'…';
}

QString shown(chemistry::Seconds time) { return timeText(time, TimeStep::FiveSeconds); }

} // namespace

TimesApartBox::TimesApartBox(QWidget* parent)
    : Card(tr("Different times in one tank"), parent), m_text(new PlainLabel(this)),
      m_buttons(new QVBoxLayout)
{
    setGround(Ground::Calm);
    m_text->setWordWrap(true);
    m_text->setObjectName(QStringLiteral("timesApart"));
    m_buttons->setSpacing(Space::kTight);
    body()->addWidget(m_text);
    body()->addLayout(m_buttons);
    hide();
}

void TimesApartBox::showTimes(const ledger::NextLoad& next, int runs, const Wording& wording)
{
    setVisible(next.apart.has_value());
    if (!next.apart)
        return;
    QStringList lines;
    for (const ledger::FilmTimeHere& one : next.filmTimes) {
        const QString film = nameOf(one.film, wording);
        lines << (one.time ? tr("%1: %2", "film, its time").arg(film, shown(*one.time))
                           : tr("%1: no time is known", "film").arg(film));
    }
    lines << tr("They are %1 apart, %2 of the shortest.", "time, share")
                 .arg(shown(next.apart->by()), percentText(next.apart->share(), wording.locale));
    lines << (next.developing
                  ? tr("As it stands, all develop for %1.").arg(shown(next.developing->time))
                  : tr("Which of them rules? Or should they not go together?"));
    m_text->setText(lines.join(u'\n'));
    setButtons(next, runs, wording);
}

void TimesApartBox::setButtons(const ledger::NextLoad& next, int runs, const Wording& wording)
{
    std::vector<formulary::FilmTime> films;
    QStringList texts;
    for (const auto& group : ledger::byTime(next.filmTimes)) {
        const ledger::FilmTimeHere& one = next.filmTimes[group.front()];
        if (!one.time)
            continue;
        films.push_back({one.film, one.figure});
        texts << tr("All for %1, as %2", "time, film")
                     .arg(shown(*one.time), shortName(one.film, wording));
    }
    if (runs > 1)
        texts << tr("Split into %n run(s)", nullptr, runs);
    if (texts == m_offered)
        return; // what is about to be pressed stays
    m_offered = texts;
    if (m_row) {
        m_buttons->removeWidget(m_row);
        m_row->hide();
        m_row->deleteLater(); // one of them may be what was just pressed
    }
    m_row = new QWidget(this);
    m_buttons->addWidget(m_row);
    auto* flow = new FlowLayout(m_row, Space::kTight);
    for (int i = 0; i < texts.size(); ++i) {
        auto* button = new QPushButton(plainCaption(texts[i]), m_row);
        button->setAccessibleName(texts[i]);
        button->setAutoDefault(false);
        setButtonLook(button, ButtonLook::Quiet);
        flow->addWidget(button);
        const bool split = i >= static_cast<int>(films.size());
        button->setObjectName(split ? QStringLiteral("splitTimes") : QStringLiteral("ruleTime"));
        if (split)
            connect(button, &QPushButton::clicked, this, &TimesApartBox::splitWanted);
        else
            connect(button, &QPushButton::clicked, this,
                    [this, film = films[std::size_t(i)]] { emit ruled(film); });
    }
}

} // namespace ullage::app
