// Whether what the entries of a book name is in the book.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/references.h"
#include "core/store/entry_row.h"

#include <functional>
#include <map>
#include <string>

namespace ullage::store
{

/// Asks for everything that the descriptions of the lines say an entry names, but for what the fold
/// of a batch looks up by itself.
class ReferenceCheck
{
public:
    /// All must outlive the check. `formulary`: what was defined before the entries that are asked
    /// about. What is named and is not there goes to `found`.
    ReferenceCheck(Connection& connection, const formulary::Formulary& formulary,
                   const std::function<void(Error)>& found);

    /// StoreFailed where the store cannot be read. `row.entry` must be there.
    Result<void> check(const EntryRow& row);

private:
    Result<bool> knows(const formulary::FieldDescription& field, const std::string& id,
                       const EntryRow& row);

    const formulary::Formulary* m_formulary;
    const std::function<void(Error)>* m_found;
    Statement m_has;
    Statement m_hadBefore;
    Statement m_run;
    Statement m_mixed;
    Statement m_event;
    Statement m_mark;
    /// By what kind of name: the one that was found last. The films of a run stand together.
    std::map<formulary::Refers, std::string> m_last;
};

} // namespace ullage::store
