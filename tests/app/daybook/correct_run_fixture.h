// Two named films through a developer, and no fixer yet; and their correction in the Day book.
#pragma once

#include "app/daybook/correct_run_dialog.h"
#include "tests/app/daybook/correct_fixture.h"

#include <QListWidget>

namespace ullage::app
{

class CorrectRun : public CorrectFixture
{
protected:
    CorrectRun()
    {
        desk.pass(-2);
        other = desk.mix("starter-mq-borax", "starter-glass-500", 500, "Dev 2");
        desk.pass(2);
    }

    void log(std::vector<std::string> bottles)
    {
        std::vector<ledger::Bath> baths;
        for (const std::string& id : bottles)
            baths.push_back({id, {}, {}, false, {}});
        const std::vector<ledger::RunFilm> films{{"120", 1, "Harbour", 400, {}},
                                                 {"120", 1, "Dunes", {}, "windy"}};
        const auto done = desk.session().doing([&](ledger::Book& book) {
            return book.process(ledger::runOf(films, baths), desk.now());
        });
        ASSERT_TRUE(done);
        runId = *done;
    }
    CorrectRunDialog* open(PageOn& on)
    {
        return correcting<CorrectRunDialog>(on, on.shown().filter("Run · ").value(0));
    }
    static QListWidget* list(const CorrectRunDialog& dialog)
    {
        return named<QListWidget>(dialog, "Went through, of those that stood then");
    }
    static QStringList offered(const CorrectRunDialog& dialog, bool ticked = false)
    {
        QStringList names;
        for (int i = 0; i < list(dialog)->count(); ++i) {
            const auto* item = list(dialog)->item(i);
            if (!ticked || item->checkState() == Qt::Checked)
                names << item->text();
        }
        return names;
    }
    static void tick(const CorrectRunDialog& dialog, const QString& name, bool on = true)
    {
        const auto found = list(dialog)->findItems(name, Qt::MatchExactly);
        ASSERT_EQ(found.size(), 1) << name.toStdString();
        found.front()->setCheckState(on ? Qt::Checked : Qt::Unchecked);
    }
    // The fields of this name, a film after the other.
    template <class Widget>
    static std::vector<Widget*> all(const QWidget& within, const QString& name)
    {
        std::vector<Widget*> found;
        for (Widget* widget : within.findChildren<Widget*>()) {
            if (widget->accessibleName() == name && !widget->isHidden())
                found.push_back(widget);
        }
        return found;
    }
    void correctAndClose(PageOn& on, CorrectRunDialog& dialog)
    {
        dialog.accept();
        EXPECT_FALSE(dialog.isVisible())
            << (dialog.refusal() + dialog.problemOf("films") + dialog.problemOf("baths"))
                   .toStdString();
        waitForRows(on);
    }
    // The rows as the book has them now.
    void waitForRows(PageOn& on)
    {
        waitFor([&] {
            return !on.page.model()->isWaiting() &&
                   on.page.model()->lastEntry() == desk.door().entries();
        });
        on.settle();
    }
    std::vector<ledger::FilmTrace> films() { return *desk.door().filmsOfRun(runId); }
    QStringList names()
    {
        QStringList found;
        for (const auto& one : films())
            found << QString::fromStdString(one.film.format + " " + one.film.name);
        return found;
    }
    double filmsThrough(const std::string& id) { return batch(id).filmsDone.value(); }

    std::string other;
    std::string runId;
};

} // namespace ullage::app
