// What an entry names, by the descriptions of its fields.
#pragma once

#include "core/formulary/field_check.h"
#include "core/ledger/line_description.h"

#include <string>

namespace ullage::ledger
{

/// Calls f(description, id) for every field that names something else in the book. What a note of
/// version 1 names was never asked for, and is not here.
template <class F>
void eachReference(const Entry& entry, F&& f)
{
    const Event* event = entry.event();
    const auto* asked = event ? std::get_if<TestAsked>(&event->what) : nullptr;
    eachEntryField(entry, [&](const formulary::FieldDescription& is, const auto& member) {
        const bool wasNote = asked && asked->asNote && is.refers == formulary::Refers::Film;
        if (!wasNote) {
            formulary::reference(is, member, f);
        }
    });
}

/// Types of line that an id of this may be one of; empty where it is no line's id.
std::span<const std::string_view> typesNamed(formulary::Refers refers);

} // namespace ullage::ledger
