#include "app/window/calendar_dialog.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QCheckBox>
#include <QDir>
#include <QFileInfo>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

CalendarDialog::CalendarDialog(const Wording& wording, const cupboard::DateKinds& kinds,
                               const QString& kept, QWidget* parent)
    : FormDialog(wording, tr("Write a calendar"), parent), m_keep(new QCheckBox(this))
{
    auto* about = new PlainLabel(tr("A file of dates that other calendars can read (.ics). A date "
                                    "that moves replaces itself when it is read again."),
                                 this);
    about->setWordWrap(true);
    setTone(about, Tone::Quiet);
    body()->addWidget(about);
    auto* column = new QVBoxLayout;
    column->setSpacing(Space::kTight);
    const std::array<QString, cupboard::kDateKindCodes.size()> names{
        tr("By when bottles are to be &discarded"), tr("When clearing &tests are due"),
        tr("What is to be &mixed, and when"), tr("What is to be &bought, and by when"),
        tr("The known &work")};
    for (std::size_t i = 0; i < names.size(); ++i) {
        m_kinds[i] = new QCheckBox(names[i], this);
        m_kinds[i]->setChecked(kinds.contains(static_cast<cupboard::DateKind>(i)));
        column->addWidget(m_kinds[i]);
    }
    body()->addLayout(column);
    m_keep->setText(tr("&Keep the file up to date while this book is open here"));
    m_keep->setChecked(!kept.isEmpty());
    setPlainToolTip(m_keep,
                    tr("It is written again when something of it has changed; a calendar that "
                       "subscribes to the file follows."));
    body()->addWidget(m_keep);
    if (!kept.isEmpty()) {
        auto* now =
            new PlainLabel(tr("Kept up to date now: %1").arg(QFileInfo(kept).fileName()), this);
        setPlainToolTip(now, QDir::toNativeSeparators(kept)); // a path has no place to be broken
        now->setWordWrap(true);
        now->setFont(Theme::font(TextRole::Small));
        body()->addWidget(now);
        auto* stop = new QPushButton(tr("Do not keep it any &longer"), this);
        setButtonLook(stop, ButtonLook::Plain);
        stop->setAutoDefault(false);
        connect(stop, &QPushButton::clicked, this, [this] {
            done(QDialog::Rejected); // nothing that was filled in is meant
            emit stopRequested();
        });
        body()->addWidget(stop, 0, Qt::AlignLeft);
    }
    setDeed(tr("Choose the file…"));
}

cupboard::DateKinds CalendarDialog::kinds() const
{
    cupboard::DateKinds kinds;
    for (std::size_t i = 0; i < m_kinds.size(); ++i) {
        if (m_kinds[i]->isChecked())
            kinds.insert(static_cast<cupboard::DateKind>(i));
    }
    return kinds;
}

bool CalendarDialog::isKept() const { return m_keep->isChecked(); }

bool CalendarDialog::fieldsAreFine()
{
    if (!kinds().empty())
        return true;
    setRefusal(tr("Choose at least one kind of dates."));
    return false;
}

} // namespace ullage::app
