// A book for the editors of the Formulary: what it is given it keeps.
#pragma once

#include "tests/app/closed_door.h"
#include "tests/app/formulary/starter.h"

#include <QLineEdit>
#include <QTest>
#include <QWidget>

#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace ullage::app
{

// A book that keeps what it is given, as the ledger's Book does, and refuses what core refuses.
struct TinyBook {
    formulary::Formulary formulary = sample::formularyWithTimes();
    int made = 0;

    struct KeepingDoor : ClosedDoor {
        TinyBook& book;

        explicit KeepingDoor(TinyBook& keeps) : book(keeps) {}
        std::vector<ledger::Judged> standing;

        [[nodiscard]] const formulary::Formulary* formulary() const override
        {
            return &book.formulary;
        }
        const std::vector<Bottle>& bottles() override { return standing; }
        std::string newId() override { return "made-" + std::to_string(++book.made); }
        using ClosedDoor::add;
        Result<void> add(const formulary::Solution& solution) override { return keep(solution); }
        Result<void> add(const formulary::Vessel& vessel) override { return keep(vessel); }
        Result<void> add(const formulary::DevelopmentFigure& figure) override
        {
            return keep(figure);
        }
        template <class What>
        Result<void> keep(const What& what)
        {
            if (auto fine = check(what); !fine)
                return fine;
            book.formulary.add(what);
            return {};
        }
    };
    KeepingDoor door{*this};
};

template <class T>
T* only(QWidget* in)
{
    const auto found = in->findChildren<T*>();
    EXPECT_EQ(found.size(), 1);
    return found.isEmpty() ? nullptr : found.front();
}

inline void retype(QLineEdit* edit, const QString& text)
{
    edit->setFocus();
    edit->selectAll();
    QTest::keyClick(edit, Qt::Key_Delete);
    QTest::keyClicks(edit, text);
}

} // namespace ullage::app
