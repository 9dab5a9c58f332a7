// What one row of a spreadsheet becomes: lines of the journal.
#pragma once

#include "app/sheet/sheet_bottles.h"
#include "app/sheet/sheet_entries.h"
#include "core/ledger/entry.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ullage::app
{

/// Reads rows one after another, bottles before what names them.
class SheetRecords
{
public:
    /// What is found out beside the lines goes into `coming`. All outlive it.
    SheetRecords(const SheetMapping& mapping, const SheetKnown& known, SheetComing& coming)
        : m_mapping(mapping), m_known(known), m_coming(coming), m_bottles(known.bottles)
    {
    }

    /// Its lines; of use where the cells are fine() afterwards. Ids are made of `key`.
    std::vector<ledger::Entry> read(SheetCells& cells, RowKind kind, const QString& key);

private:
    struct TestFigures {
        std::optional<double> seconds;
        std::optional<double> warm;
        std::optional<double> density;
        std::optional<double> factor;
    };

    [[nodiscard]] std::string id(const char* what) const { return id(what, m_round); }
    [[nodiscard]] std::string id(const char* what, int round) const;
    [[nodiscard]] int roundOf(RowKind kind) const;
    void event(const SheetCells& cells, const char* what, const std::string& batch,
               chemistry::Instant at, ledger::Happening happening);
    void note(const SheetCells& cells, const std::string& batch, chemistry::Instant at);
    void missing(SheetCells& cells, SheetField field);

    void bottle(SheetCells& cells);
    std::optional<std::string> solutionOf(SheetCells& cells);
    std::string vesselFor(const SheetCells& cells, std::optional<double> capacity, double volume);

    const KnownBottle* bottleOf(SheetCells& cells, SheetField field, chemistry::Instant at) const;
    [[nodiscard]] std::optional<chemistry::Instant> momentWith(SheetCells& cells,
                                                               QTime usual) const;
    void film(SheetCells& cells);
    TestFigures figuresOf(SheetCells& cells);
    void tested(const SheetCells& cells, const TestFigures& figures, const std::string& clearing,
                const std::string& developing, chemistry::Instant at,
                std::optional<bool> passed = {});
    void test(SheetCells& cells);

    const SheetMapping& m_mapping;
    const SheetKnown& m_known;
    SheetComing& m_coming;
    SheetBottles m_bottles;
    std::map<QString, std::string> m_vessels; ///< made for the sheet, by their names there
    QString m_key;                            ///< of the row
    int m_round = 0;                          ///< of the row
    std::vector<ledger::Entry> m_lines;       ///< of the row
};

} // namespace ullage::app
