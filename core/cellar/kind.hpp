#pragma once

#include "core/cellar/field.hpp"

#include <span>
#include <string_view>

/// The kinds of entries this version understands. Each has one state table of its own name; the
/// table's columns are its fields. Adding a kind is adding a row here (DEVELOPERS.md).
namespace spile::cellar {

struct KindField {
    Field field;
    bool required = false;
};

struct KindSpec {
    std::string_view kind;
    std::uint32_t version = 1;
    std::span<const KindField> fields;
    bool aboutBarrel = false;  // its subject is a barrel, whose summary it may change
    bool followed = false;     // looked up by the entry that it answers: beer is traced by it
    bool bySubject = false;    // many to a subject and read together, never alone by their entry
};

[[nodiscard]] std::span<const KindSpec> allKinds();
/// None if this version does not know the kind.
[[nodiscard]] const KindSpec* findKind(std::string_view kind);

/// The two kinds that change what another entry says; they have no table of their own fields.
inline constexpr std::string_view amendKind = "amend";
inline constexpr std::string_view voidKind = "void";
/// The version of both that this version understands.
inline constexpr std::uint32_t correctionVersion = 1;

/// Check a new entry's fields: the required ones there, each one the kind's own and in range.
///
/// Errors    Malformed or OutOfRange, naming the field, the value and what would be right.
[[nodiscard]] Result<void> checkFields(const KindSpec& kind, const ledger::Fields& fields);

}  // namespace spile::cellar
