// Films and what they went through, both ways: from a film to its bottles, from a bottle to its
// films.
#pragma once

#include "core/formulary/formulary.h"
#include "core/ledger/film_trace.h"
#include "core/store/line_proof.h"
#include "core/store/sql_store.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage::store
{

/// The marks that stand on a film of these ids (ledger::FilmNow), in order of entry.
Result<std::vector<ledger::FilmMark>> marksOf(SqlStore& store, const std::vector<std::string>& ids);

class FilmReader
{
public:
    /// Both outlive it; to be used from the thread of `store`.
    FilmReader(SqlStore& store, const formulary::Formulary& formulary);

    /// By any id that it has, as it is now; empty if there is no such film, or it was taken out of
    /// its run.
    Result<std::optional<ledger::FilmTrace>> film(const std::string& id);
    /// Films that went through this bottle in runs that stand, newest first.
    Result<std::vector<ledger::FilmTrace>> ofBatch(const std::string& batch);
    /// Films of one run in order of entry; of one that was taken back too.
    Result<std::vector<ledger::FilmTrace>> ofRun(const std::string& run);
    /// Films of runs that stand, from that moment on and before that other, newest first.
    Result<std::vector<ledger::FilmTrace>> between(chemistry::Instant from,
                                                   chemistry::Instant until);
    /// Films with a mark that stands, of runs that stand, newest first.
    Result<std::vector<ledger::FilmTrace>> marked();

private:
    Result<std::vector<std::string>> runs(Result<Rows> rows);
    Result<std::vector<ledger::FilmTrace>> traces(const std::vector<std::string>& runs);

    SqlStore& m_store;
    const formulary::Formulary& m_formulary;
    LineProof m_proof;
    Statement m_ofRun;
    Statement m_runsOfBatch;
    Statement m_runsBetween;
    Statement m_runsMarked;
};

} // namespace ullage::store
