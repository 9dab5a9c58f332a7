// How the core says no: a code and its numbers, never a sentence and never an exception.
//
// The application turns an Error into words in the user's language and units (app/words); the
// command line and the journal print the same words with file and line in front.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <tl/expected.hpp>

namespace ullage
{

enum class ErrorCode {
    Missing,       ///< a field that must be there is not
    OutOfRange,    ///< `number` is outside [low, high]
    NotFinite,     ///< NaN or infinite
    NotANumber,    ///< `text` is not a number of the field's unit
    Malformed,     ///< `text` has not the form `allowed` describes
    UnknownKind,   ///< `text` is none of `allowed`
    UnknownId,     ///< `text` names nothing in the book
    IdTaken,       ///< `text` is already in the book with other content
    Conflict,      ///< fields that exclude each other, or one that another needs
    NotEnough,     ///< more used, lost or drawn than is in the bottle: [0, high]
    TooMuch,       ///< more than the vessel holds: [0, high]
    BeforeMixing,  ///< the event is earlier than its batch
    AfterEnd,      ///< the batch was discarded or used up before this event
    AlreadyMixed,  ///< the batch exists already
    InFuture,      ///< more than a day ahead of the clock
    AlreadyVoided, ///< the event was taken back already
    CannotVoid,    ///< other events stand on this one
    NoFigure,      ///< nothing to compute from: no figure, no time
    NotSuitable,   ///< the wrong kind of solution, vessel or state for this
    NothingToUndo, ///< the book has no such action
    NewerBook,     ///< written by a newer program: `number` is the version it needs
    NotABook,      ///< the file is something else
    StoreFailed,   ///< the database said no; `text` is its own message
    TooLong,       ///< longer than `high` bytes
    BadEncoding,   ///< not UTF-8
    FileFailed,    ///< a file cannot be read or written; `text` is the system's own message
    NotBuilt,      ///< the journal knows it, but its effect is not reckoned yet: refused by name
    Busy,          ///< another program holds a lock: `subject`, if known; waited for `high` seconds
    BookMoved,     ///< the open book's file is another now: `text` is missing, replaced or log
    BookDamaged,   ///< the book's pages do not fit together; `text` is the database's finding
    BookItself,    ///< the file chosen for something else is the open book
    ReadOnly,      ///< the book, or its folder, may not be written by this user
    NotAsEntered,  ///< the book is not what was entered; what is wrong is a code in `text`
    Cancelled,     ///< whoever waited for it wants it no more
};

/// One refusal. Fields that do not apply stay empty.
struct Error {
    ErrorCode code{};
    std::string field;            ///< the field's name as the journal spells it
    std::string text;             ///< the offending value as text
    std::string allowed;          ///< what would do, as a list or a form ("glass, pet, hdpe")
    std::optional<double> number; ///< the offending value
    std::optional<double> low;    ///< smallest value allowed
    std::optional<double> high;   ///< largest value allowed
    std::string unit;             ///< unit of number, low and high, as in field names ("ml", "°C")
    std::string file;             ///< the journal, where it came from one
    int line = 0;                 ///< its line, from 1
    std::string subject;          ///< id or name of the batch, vessel or event it is about
    std::int64_t entry = 0;       ///< number of the book's entry it is about, from 1
    std::string entryType;        ///< and that entry's type; its id is the subject
};

template <class T>
using Result = tl::expected<T, Error>;

inline tl::unexpected<Error> refuse(Error error) { return tl::unexpected<Error>(std::move(error)); }

/// Succeeds when `value` is finite and within [low, high]; the error names field, value and range.
[[nodiscard]] Result<void> checkRange(const char* field, double value, double low, double high,
                                      const char* unit);

} // namespace ullage
