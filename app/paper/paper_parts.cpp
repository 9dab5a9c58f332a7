#include "app/paper/paper_parts.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct PaperParts {
    Q_DECLARE_TR_FUNCTIONS(PaperParts)
};

} // namespace

QString paperDay(chemistry::Instant moment, const PaperAbout& about)
{
    return yearDateText(localDate(moment), about.wording.locale);
}

QString underOf(const PaperAbout& about)
{
    return PaperParts::tr("%1 · as of %2", "book, day").arg(about.book, paperDay(about.now, about));
}

void addTable(PaperDocument& document, const FiguresTable& table)
{
    document.blocks.emplace_back(PaperHeading{table.title});
    PaperTable paper;
    for (const FiguresColumn& column : table.columns)
        paper.columns.push_back({column.title, column.right});
    for (const auto& row : table.rows) {
        QStringList cells;
        for (const FiguresCell& cell : row)
            cells << cell.text;
        paper.rows.push_back(std::move(cells));
    }
    paper.total = table.total;
    paper.none = table.none;
    document.blocks.emplace_back(std::move(paper));
}

} // namespace ullage::app
