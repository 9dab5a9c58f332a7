// Strictly typed reading of an object's fields: no text is taken for a number, no null for a text.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"
#include "core/ledger/decimal.h"

#include <QJsonArray>
#include <QJsonObject>
#include <QJsonValue>

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::store
{

/// Reads fields one after another and remembers the first refusal; what is read after it is of no
/// use. Fields of inner objects are named with their way ("keeping.full_days").
class Fields
{
public:
    /// `refusal` must outlive the reading and be shared by inner objects.
    Fields(QJsonObject object, std::optional<Error>& refusal, std::string way = {});

    [[nodiscard]] bool has(const char* key) const;

    /// Missing if absent; Malformed for another type or a text that cannot
    /// be kept (core/ledger/typed_text.h).
    std::string text(const char* key);
    std::string textIf(const char* key); ///< empty if absent

    /// Missing if absent; NotANumber for another type. Ranges are the core's business.
    double number(const char* key);
    /// Missing if absent; Malformed for anything but true and false.
    bool truth(const char* key);

    /// Missing if absent; a text, or a number as version 1 had it.
    ledger::Decimal decimal(const char* key);

    /// The place of the text in `codes`; UnknownKind with the list otherwise.
    std::size_t choice(const char* key, std::span<const std::string_view> codes);

    /// An RFC 3339 moment (instant_text.h).
    chemistry::Instant moment(const char* key);
    /// A date as written, "" if absent.
    std::string dateIf(const char* key);

    /// A list of texts; one text stands for a list of one. Empty if absent.
    std::vector<std::string> textsIf(const char* key);
    /// An object of texts.
    void texts(const char* key, std::map<std::string, std::string>& into);

    Fields inner(const char* key);
    QJsonArray list(const char* key);
    /// An object that stands in list `key`.
    Fields element(const char* key, const QJsonValue& value);

    void refuseWith(Error error, const char* key);

private:
    QJsonValue get(const char* key, bool required);
    std::string textOf(const char* key, const QJsonValue& value);

    QJsonObject m_object;
    std::optional<Error>* m_refusal;
    std::string m_way;
};

/// A value as an error quotes it, cut where it is long.
std::string shown(const QJsonValue& value);

} // namespace ullage::store
