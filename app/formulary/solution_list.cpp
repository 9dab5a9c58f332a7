#include "app/formulary/solution_list.h"

#include "app/widgets/name_font.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/widgets/wrapping_list.h"
#include "app/words/shown_names.h"

#include <QAction>
#include <QLineEdit>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

QString groupName(formulary::Role role)
{
    switch (role) {
    case formulary::Role::Developer:
        return SolutionList::tr("Developers");
    case formulary::Role::Stop:
        return SolutionList::tr("Stop baths");
    case formulary::Role::Fixer:
        return SolutionList::tr("Fixers");
    case formulary::Role::WashAid:
    case formulary::Role::WettingAgent:
        return SolutionList::tr("After");
    case formulary::Role::Other:
        break;
    }
    return SolutionList::tr("Other");
}

constexpr int kHeadingHeight = 32;
constexpr int kRowHeight = 36;
constexpr int kLineHeight = 18; // what a row is taller for each line more
constexpr int kMostLines = 3;

QRectF wordsOf(const QRectF& cell, bool heading)
{
    return cell.adjusted(heading ? 10 : 14, heading ? 4 : 0, -10, 0);
}

// What tells two solutions apart often stands at the end of the name.
QStringList linesOf(const QString& name, bool chosen, double width)
{
    QStringList lines = brokenLines(name, QFontMetricsF(nameFont(chosen)), width);
    if (lines.size() > kMostLines)
        lines = lines.mid(0, kMostLines - 1) << lines.mid(kMostLines - 1).join(u' ');
    return lines;
}

class SolutionDelegate : public QStyledItemDelegate
{
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    // As high in the heavier letters of the one that is chosen: nothing moves when it is.
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        if (index.data(SolutionListModel::HeadingRole).toBool())
            return {180, kHeadingHeight};
        const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
        const QRectF cell(0, 0, view ? view->viewport()->width() : 180, kRowHeight);
        const auto lines = linesOf(index.data().toString(), true, wordsOf(cell, false).width());
        return {180, kRowHeight + (static_cast<int>(lines.size()) - 1) * kLineHeight};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override
    {
        const Colours& c = colours();
        const bool heading = index.data(SolutionListModel::HeadingRole).toBool();
        const bool chosen = option.state & QStyle::State_Selected;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRectF cell = QRectF(option.rect).adjusted(0, 1, 0, -1);
        if (chosen || (!heading && option.state & QStyle::State_MouseOver)) {
            painter->setPen(option.state & QStyle::State_HasFocus ? QPen(c.focus, 2) : Qt::NoPen);
            painter->setBrush(chosen ? c.selected : c.raised);
            painter->drawRoundedRect(cell.adjusted(1, 0, -1, 0), Space::kRadius, Space::kRadius);
        }
        const QFont font = heading ? Theme::font(TextRole::CardTitle) : nameFont(chosen);
        painter->setFont(font);
        painter->setPen(heading ? c.quiet : c.ink);
        QRectF line = wordsOf(cell, heading);
        QStringList lines{index.data().toString()};
        if (!heading)
            lines = linesOf(lines.front(), chosen, line.width());
        line.setHeight(line.height() - static_cast<double>(lines.size() - 1) * kLineHeight);
        for (const QString& words : lines) {
            painter->drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                              oneLine(words, QFontMetricsF(font), line.width()));
            line.translate(0, kLineHeight);
        }
        painter->restore();
    }
};

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

} // namespace

void SolutionListModel::setSolutions(
    const std::vector<std::shared_ptr<const formulary::Solution>>& solutions, const QString& wanted)
{
    beginResetModel();
    m_rows.clear();
    QString group;
    auto sorted = solutions;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const auto& a, const auto& b) { return a->role < b->role; });
    for (const auto& solution : sorted) {
        const QString name = shownName(solution->name);
        if (!name.contains(wanted.trimmed(), Qt::CaseInsensitive))
            continue;
        if (const QString own = groupName(solution->role); own != group) {
            group = own;
            m_rows.push_back({{}, group});
        }
        m_rows.push_back({text(solution->id), name});
    }
    endResetModel();
}

int SolutionListModel::rowOf(const QString& id) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) {
        return !row.id.isEmpty() && row.id == id;
    });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int SolutionListModel::firstSolution() const { return m_rows.empty() ? -1 : 1; }

int SolutionListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant SolutionListModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return row.text;
    case Qt::ToolTipRole:
        return plainToolTip(row.text);
    case IdRole:
        return row.id;
    case HeadingRole:
        return row.id.isEmpty();
    default:
        return {};
    }
}

Qt::ItemFlags SolutionListModel::flags(const QModelIndex& index) const
{
    if (index.isValid() && m_rows[static_cast<std::size_t>(index.row())].id.isEmpty())
        return Qt::NoItemFlags;
    return QAbstractListModel::flags(index);
}

SolutionList::SolutionList(QWidget* parent)
    : QWidget(parent), m_model(new SolutionListModel(this)), m_view(new WrappingList(this)),
      m_search(new QLineEdit(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kSmall);
    m_search->setPlaceholderText(tr("Find a solution"));
    m_search->setAccessibleName(tr("Find a solution"));
    m_search->setClearButtonEnabled(true);
    column->addWidget(m_search);
    column->addWidget(m_view, 1);
    m_view->setModel(m_model);
    m_view->setItemDelegate(new SolutionDelegate(m_view));
    m_view->setFrameShape(QFrame::NoFrame);
    m_view->setStyleSheet(QStringLiteral("QListView { background: transparent; border: none; }"));
    m_view->setMouseTracking(true);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setAccessibleName(tr("Solutions"));
    setFocusProxy(m_view);
    connect(m_search, &QLineEdit::textChanged, this, &SolutionList::refill);
    connect(m_search, &QLineEdit::returnPressed, m_view, qOverload<>(&QWidget::setFocus));
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                const QString id = current.data(SolutionListModel::IdRole).toString();
                if (id.isEmpty() || id == m_chosen)
                    return;
                m_chosen = id;
                emit solutionChosen(id);
            });
    connect(m_view, &QListView::activated, this, [this](const QModelIndex& index) {
        emit solutionOpened(index.data(SolutionListModel::IdRole).toString());
    });
}

void SolutionList::setFormulary(const formulary::Formulary& formulary)
{
    m_solutions = formulary.currentSolutions();
    m_search->setVisible(static_cast<int>(m_solutions.size()) > kMostUnsearched);
    const auto isShown = [&](const std::string& id) {
        return std::any_of(m_solutions.begin(), m_solutions.end(),
                           [&](const auto& solution) { return solution->id == id; });
    };
    // What was chosen may have been replaced since: then its newest form is meant.
    for (const std::string& id : formulary.family(m_chosen.toStdString())) {
        if (isShown(id)) {
            m_chosen = text(id);
            break;
        }
    }
    refill();
}

QString SolutionList::chosen() const { return m_chosen; }

void SolutionList::choose(const QString& id)
{
    if (m_model->rowOf(id) < 0)
        m_search->clear();
    if (const int row = m_model->rowOf(id); row >= 0)
        m_view->setCurrentIndex(m_model->index(row));
}

void SolutionList::refill()
{
    const QString wanted = m_search->isHidden() ? QString() : m_search->text();
    m_model->setSolutions(m_solutions, wanted);
    int row = m_model->rowOf(m_chosen);
    if (row < 0)
        row = m_model->firstSolution();
    if (row < 0)
        return;
    m_view->setCurrentIndex(m_model->index(row));
}

} // namespace ullage::app
