#include "app/words/error_words.h"

#include "app/words/allowed_words.h"
#include "app/words/field_words.h"
#include "app/words/number_text.h"
#include "app/words/printable_text.h"
#include "app/words/shown_names.h"
#include "app/words/store_words.h"
#include "core/formulary/field_of.h"
#include "core/store/damage.h"

#include <QCoreApplication>

#include <cmath>

namespace ullage::app
{

namespace
{

constexpr double kWholeDigits = 1e15; // below it a double holds every whole number
constexpr int kMostAllowed = 800;     // characters: every kind there is, and no person's text

class ErrorWords
{
    Q_DECLARE_TR_FUNCTIONS(ErrorWords)

public:
    ErrorWords(const Error& error, const Wording* wording, QString about)
        : m_error(error), m_wording(wording), m_about(std::move(about))
    {
    }

    [[nodiscard]] QString sentence() const
    {
        const QString field = fieldText();
        QString what = whatText();
        if (!field.isEmpty()) {
            what = tr("%1: %2", "field: what is wrong").arg(field, what);
        }
        return m_error.entry > 0 && m_error.code != ErrorCode::NotAsEntered
                   ? tr("%1: %2", "entry of the book: what is wrong").arg(entry(), what)
                   : what;
    }

private:
    // What a person typed or a file held.
    [[nodiscard]] static QString text(const std::string& utf8)
    {
        return shortened(QString::fromStdString(utf8));
    }

    [[nodiscard]] QString fieldText() const
    {
        return m_wording ? fieldName(m_error.field) : text(m_error.field);
    }

    // A number in its unit: the user's, or as stored when nobody's units are asked for.
    [[nodiscard]] QString amount(double value) const
    {
        if (std::isnan(value)) {
            return tr("not a number");
        }
        if (std::isinf(value)) {
            return tr("infinite");
        }
        const QString unit = text(m_error.unit);
        if (!m_wording) {
            const bool whole = value == std::trunc(value) && std::abs(value) < kWholeDigits;
            const QString digits =
                whole ? QString::number(value, 'f', 0)
                      : QString::number(value, 'g', QLocale::FloatingPointShortest);
            return unit.isEmpty() ? digits : digits + u' ' + unit;
        }
        if (unit == u"ml") {
            return volumeText(chemistry::Millilitres(value), *m_wording);
        }
        if (unit == u"°C") {
            return shortTemperatureText(chemistry::Celsius(value), *m_wording);
        }
        if (unit == u"s") {
            return timeText(chemistry::Seconds(value));
        }
        if (unit == u"characters") {
            return tr("%Ln character(s)", nullptr, static_cast<int>(value));
        }
        const QString digits = numberText(value, 3, m_wording->locale);
        return unit.isEmpty() ? digits : digits + u' ' + unit;
    }

    [[nodiscard]] QString value() const
    {
        return m_error.number ? amount(*m_error.number) : text(m_error.text);
    }

    // "Allowed: 0 to 980 ml." Limits that only mean "more than nothing" are said so.
    [[nodiscard]] QString allowed() const
    {
        if (m_error.low && m_error.high) {
            if (formulary::isAboveNothing(*m_error.low)) {
                return tr("Allowed: more than 0, at most %1.").arg(amount(*m_error.high));
            }
            return tr("Allowed: %1 to %2.").arg(amount(*m_error.low), amount(*m_error.high));
        }
        if (m_error.high) {
            return tr("Allowed: at most %1.").arg(amount(*m_error.high));
        }
        return m_error.allowed.empty()
                   ? QString()
                   : tr("Allowed: %1.").arg(shortened(allowedText(m_error.allowed), kMostAllowed));
    }

    [[nodiscard]] QString with(const QString& what) const
    {
        const QString range = allowed();
        return range.isEmpty() ? what : what + u' ' + range;
    }

    [[nodiscard]] QString subject() const
    {
        if (m_error.subject.empty())
            return tr("the bottle");
        // What lies in the cupboard may go by the name of a solution of the starter formulary.
        const bool ofCupboard = m_error.field == "amount" || m_error.field == "item";
        return m_wording && ofCupboard ? shortened(shownName(m_error.subject))
                                       : text(m_error.subject);
    }

    [[nodiscard]] QString whatText() const
    {
        switch (m_error.code) {
        case ErrorCode::Missing:
            return with(tr("is missing."));
        case ErrorCode::OutOfRange:
            return with(tr("%1 is out of range.").arg(value()));
        case ErrorCode::NotFinite:
            return with(tr("must be a finite number, not %1.").arg(value()));
        case ErrorCode::NotANumber:
            return with(tr("“%1” is not a number.").arg(text(m_error.text)));
        case ErrorCode::Malformed:
            return with(m_error.text.empty() ? tr("cannot be read.")
                                             : tr("“%1” cannot be read.").arg(text(m_error.text)));
        case ErrorCode::UnknownKind:
            return with(tr("“%1” is not known.").arg(text(m_error.text)));
        case ErrorCode::UnknownId:
            return with(tr("the book has no “%1”.").arg(text(m_error.text)));
        case ErrorCode::IdTaken:
            return with(tr("“%1” is taken already, with other content.").arg(text(m_error.text)));
        case ErrorCode::Conflict:
            return with(value().isEmpty() ? tr("does not go with the rest.")
                                          : tr("%1 does not go with the rest.").arg(value()));
        case ErrorCode::NotEnough:
            return with(tr("%1 is more than is in %2.").arg(value(), subject()));
        case ErrorCode::TooMuch:
            return with(
                m_error.allowed.empty()
                    ? tr("%1 is more than fits.").arg(value())
                    : tr("%1 is more than fits into %2.").arg(value(), text(m_error.allowed)),
                Range);
        default:
            return stateText();
        }
    }

    // The name is the file's, or stands in the text where there was none to go by.
    [[nodiscard]] QString notABookText() const
    {
        const std::string& why = m_error.text;
        if (why == "missing") {
            return tr("there is no such book.");
        }
        if (why == "empty") {
            return tr("the file is empty: there is no book in it.");
        }
        if (why == "no name") {
            return tr("a book needs the name of a file.");
        }
        if (why == "folder") {
            return tr("this is a folder, not a book.");
        }
        if (why == "dangling link") {
            return tr("this is a link to a file that is not there.");
        }
        if (why == "not a file") {
            return tr("this is not an ordinary file, so it is not a book.");
        }
        if (why == "unreadable") {
            return tr("you may not read this file.");
        }
        if (why == "not SQLite") {
            return tr("this file is not a book.");
        }
        if (why == "another program's") {
            return tr("this file belongs to another program; it is not a book.");
        }
        if (why == "log alone") {
            return tr("the book itself is missing or empty, and only its log (-wal) stands there. "
                      "Put the book back beside it, or restore a copy.");
        }
        return with(tr("“%1” is not a book.").arg(text(why)));
    }

    // Who holds it, and how long that was waited for.
    [[nodiscard]] QString busyText() const
    {
        const QString who =
            m_error.subject.empty() ? tr("another program or window") : text(m_error.subject);
        const int seconds = static_cast<int>(std::lround(m_error.high.value_or(0)));
        const QString what = tr("the book is being written by %1.", "a program").arg(who);
        const QString waited = seconds > 0
                                   ? u' ' + tr("Waited for it for %n second(s).", nullptr, seconds)
                                   : QString();
        return what + waited + u' ' +
               tr("Nothing was entered. Let it finish, or close it, and try again.");
    }

    enum RangeOnly { Range };
    [[nodiscard]] QString with(const QString& what, RangeOnly) const
    {
        return m_error.high ? what + u' ' +
                                  tr("Allowed: %1 to %2.")
                                      .arg(amount(m_error.low.value_or(0)), amount(*m_error.high))
                            : what;
    }

    // What people know it by; or "entry 12 (event “e2”)": the type as the journal spells it, the id
    // as far as it can be read.
    [[nodiscard]] QString entry() const
    {
        const QString number = QString::number(m_error.entry);
        if (!m_about.isEmpty()) {
            return m_wording ? m_about : tr("entry %1 (%2)").arg(number, m_about);
        }
        const QString type = text(m_error.entryType);
        return type.isEmpty() ? tr("entry %1").arg(number)
                              : tr("entry %1 (%2 “%3”)").arg(number, type, text(m_error.subject));
    }

    [[nodiscard]] static QString count(std::optional<double> value)
    {
        return QString::number(value.value_or(0), 'f', 0);
    }

    // A book that is not what was entered.
    [[nodiscard]] QString damageText() const
    {
        const std::string& what = m_error.text;
        if (what == store::damage::kChanged) {
            return tr("%1 is not as it was entered.").arg(entry());
        }
        if (what == store::damage::kHash) {
            return tr("%1 is as it was entered, but its hash is not.").arg(entry());
        }
        if (what == store::damage::kForeign) {
            return tr("%1 was put in by something else.").arg(entry());
        }
        if (what == store::damage::kBefore) {
            return tr("%1 was faulty already when the book first got hashes.").arg(entry());
        }
        if (what == store::damage::kMissing) {
            return m_error.low == m_error.high ? tr("entry %1 is missing.").arg(count(m_error.low))
                                               : tr("entries %1 to %2 are missing.")
                                                     .arg(count(m_error.low), count(m_error.high));
        }
        if (what == store::damage::kLost) {
            return tr("the book was last seen here with %1 entries; now it has %2. Something was "
                      "lost, or an older copy stands in its place: restore the newest copy, or "
                      "take the book as it is with “ullage check --accept”.")
                .arg(count(m_error.high), count(m_error.number));
        }
        if (what == store::damage::kForked) {
            return tr("%1 is not the one last seen here: another book, with other entries, has "
                      "taken its place.")
                .arg(entry());
        }
        return partText();
    }

    // What is no entry.
    [[nodiscard]] QString partText() const
    {
        const std::string& what = m_error.text;
        const QString name = text(m_error.subject);
        if (what == store::damage::kBatch) {
            return tr("the batch “%1” has other events than were entered.").arg(name);
        }
        if (what == store::damage::kNote) {
            return tr("what the book notes of itself under “%1” was changed.").arg(name);
        }
        if (what == store::damage::kNoTable) {
            return tr("the book's %1 is missing.", "a table or trigger").arg(name);
        }
        if (what == store::damage::kTable) {
            return tr("the book's %1 is not as the program makes it.").arg(name);
        }
        if (what == store::damage::kExtra) {
            return tr("the book's %1 was not made by this program.").arg(name);
        }
        return tr("what the book notes of its last entry does not agree with that entry.");
    }

    // Refusals that are about the state of the book, not about one value.
    [[nodiscard]] QString stateText() const
    {
        switch (m_error.code) {
        case ErrorCode::BeforeMixing:
            return tr("this would be before %1 was mixed. Choose a later time.").arg(subject());
        case ErrorCode::AfterEnd:
            return tr("%1 was discarded or used up before this. Choose an earlier time.")
                .arg(subject());
        case ErrorCode::AlreadyMixed:
            return tr("the batch “%1” was mixed already.").arg(text(m_error.text));
        case ErrorCode::InFuture:
            return tr("lies %1 in the future. Allowed: at most one day. Is this computer's clock "
                      "right?")
                .arg(value());
        case ErrorCode::AlreadyVoided:
            return tr("“%1” was taken back already.").arg(text(m_error.text));
        case ErrorCode::CannotVoid:
            return tr(
                "cannot be taken back: what happened later rests on it. Take that back first.");
        case ErrorCode::NoFigure:
            return tr("there is no figure for this, and so no time. Enter the leaflet time.");
        case ErrorCode::NotSuitable:
            return with(tr("“%1” does not suit this.").arg(text(m_error.text)));
        case ErrorCode::NotBuilt:
            return value().isEmpty()
                       ? tr("this program cannot take this into account yet.")
                       : tr("this program cannot take “%1” into account yet.").arg(value());
        case ErrorCode::NotAsEntered:
            return damageText();
        case ErrorCode::NothingToUndo:
            return m_error.text == "others"
                       ? tr("there is nothing of this window's to undo. What others entered is "
                            "taken back from the Day book.")
                       : tr("There is nothing to undo or redo.");
        case ErrorCode::NewerBook:
            return tr("was written by a newer program; version %1 is needed. Nothing was changed.")
                .arg(value());
        case ErrorCode::NotABook:
            return notABookText();
        case ErrorCode::Busy:
            return busyText();
        case ErrorCode::BookMoved:
            return movedBookText(m_error);
        case ErrorCode::BookDamaged:
            return tr("The book is damaged and can only be read. Nothing more is entered into it. "
                      "Restore a copy, or salvage what is left.");
        case ErrorCode::StoreFailed:
            return storeFailureText(m_error);
        case ErrorCode::FileFailed:
            return tr("The file could not be read or written: %1").arg(text(m_error.text));
        case ErrorCode::TooLong:
            return with(m_error.number ? tr("%1 are too many.").arg(value()) : tr("is too long."));
        case ErrorCode::BadEncoding:
            return tr("is not UTF-8 text.");
        case ErrorCode::BookItself:
            return tr("this file is the open book itself. Choose another file.");
        case ErrorCode::ReadOnly:
            return tr("the book can only be read here: you may not write to it or its folder. "
                      "Nothing was entered. Copy it to a place of your own and open it there.");
        case ErrorCode::Cancelled:
            return tr("was stopped. Nothing was changed.");
        default:
            return value();
        }
    }

    const Error& m_error;
    const Wording* m_wording;
    QString m_about;
};

} // namespace

QString errorSentence(const Error& error, const Wording& wording, const QString& about)
{
    QString sentence = ErrorWords(error, &wording, about).sentence();
    if (!sentence.isEmpty()) {
        sentence[0] = sentence[0].toUpper();
        // What the system says, or a program beside it, comes without a stop; more may follow.
        if (!QStringLiteral(".!?…").contains(sentence.back()))
            sentence += u'.';
    }
    if (error.line > 0) {
        sentence =
            QCoreApplication::translate("ErrorWords", "Line %1: %2").arg(error.line).arg(sentence);
    }
    return sentence;
}

QString errorLine(const Error& error, const QString& about)
{
    constexpr qsizetype kLongestPath = 4096; // PATH_MAX of most systems
    QString line;
    if (!error.file.empty()) {
        line = printable(QString::fromStdString(error.file), kLongestPath) + u':';
    }
    if (error.line > 0) {
        line += QString::number(error.line) + u':';
    }
    return (line.isEmpty() ? line : line + u' ') + ErrorWords(error, nullptr, about).sentence();
}

} // namespace ullage::app
