#include "app/words/error_words.h"
#include "core/store/journal_codec.h"
#include "tests/core/ledger/memory_store.h"
#include "tests/fuzz/fuzz_targets.h"

namespace ullage::fuzz
{

using namespace store;

void decodeOneLine(const QByteArray& text)
{
    const auto line = decodeLine(text);
    if (!line) {
        need(!app::errorLine(line.error()).isEmpty(), "a refusal without words");
        return;
    }
    if (const auto* header = std::get_if<Header>(&*line)) {
        const auto again = decodeLine(QByteArray::fromStdString(header->body));
        need(again && std::get<Header>(*again).body == header->body, "another header");
        return;
    }
    const auto& entry = std::get<ledger::Entry>(*line);
    const auto body = QByteArray::fromStdString(entry.body);
    const auto again = decodeLine(body);
    need(again.has_value(), "the canonical form is refused");
    const auto& second = std::get<ledger::Entry>(*again);
    need(second.body == entry.body, "the canonical form has another");
    need(printed(second) == printed(entry), "the canonical form says something else");
    need(encode(entry) == body, "not written as it was kept");
    const auto kept = decodeStored(body);
    need(kept && printed(*kept) == printed(entry), "what was kept says something else");

    // As if it had been entered here: written from its values.
    ledger::Entry fresh = entry;
    fresh.body.clear();
    const auto anew = decodeLine(encode(fresh));
    need(anew.has_value(), "written from its values it is refused");
    need(printed(std::get<ledger::Entry>(*anew)) == printed(entry), "its values changed");
}

} // namespace ullage::fuzz
