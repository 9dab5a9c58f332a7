// What a spreadsheet would bring into the book, as somebody decided it so far, and what the dialog
// shows of that. For any thread.
#pragma once

#include "app/dialogs/sheet_view.h"
#include "app/sheet/sheet_entries.h"
#include "app/sheet/sheet_guess.h"
#include "app/words/units.h"
#include "core/ledger/book.h"
#include "core/store/sql_store.h"

#include <optional>
#include <vector>

namespace ullage::app
{

/// What was chosen; the rest is found out.
struct SheetDecided {
    store::SheetAsked reading;
    std::optional<bool> decimalComma;
    std::optional<DayOrder> order;
    std::vector<SheetField> fields; ///< of the columns; empty: by their headings
    std::map<QString, QString> solutions;
};

struct SheetJudged {
    SheetMapping mapping;
    SheetComing coming;
    SheetView view;
};

/// Reads the sheet and asks the book, which is left as it is. `kept` are mappings of before: one
/// for the same headings answers what was not decided. Refuses as readTable() and the store do.
Result<SheetJudged> judgeSheet(const QByteArray& sheet, const SheetDecided& decided,
                               const std::vector<SheetMapping>& kept, ledger::Book& book,
                               store::SqlStore& store, const Wording& wording);

/// What was picked in the dialog's boxes, which showed `view` of `mapping`.
SheetDecided decidedBy(const SheetPicks& picks, const SheetView& view, const SheetMapping& mapping,
                       const SheetDecided& before);

/// Enters it as one step of undo, which the menu calls `name`: all of it, or nothing where it
/// contradicts by now. The entries added.
Result<int> enterSheet(SheetComing& coming, const QString& name, ledger::Book& book,
                       store::SqlStore& store);

} // namespace ullage::app
