#include "tests/fuzz/forged_body.hpp"

#include "core/cellar/kind.hpp"

#include <array>
#include <limits>

namespace spile::fuzz {

std::int64_t numberNear(std::int64_t least, std::int64_t most, Input& input)
{
    switch (input.below(8)) {
        case 0:
            return least;
        case 1:
            return most;
        case 2:
            return most < std::numeric_limits<std::int64_t>::max() ? most + 1 : most;
        case 3:
            return static_cast<std::int64_t>(input.number(8));
        default: {
            const auto span = static_cast<std::uint64_t>(most) - static_cast<std::uint64_t>(least);
            return static_cast<std::int64_t>(static_cast<std::uint64_t>(least) +
                                             input.number(4) % (span == ~0ULL ? span : span + 1));
        }
    }
}

SubjectId Referable::subject(Input& input) const
{
    const std::size_t which = input.byte();
    if (which < 200) {
        return subjects[which % subjects.size()];
    }
    std::array<std::uint8_t, SubjectId::size> bytes{};
    bytes[0] = static_cast<std::uint8_t>(which);
    return SubjectId(bytes);
}

EntryId Referable::entry(std::size_t place) const
{
    const std::size_t all = known.size() + made.size();
    place %= all + 1;
    if (place == all) {  // one that nobody has
        return EntryId(std::array<std::uint8_t, EntryId::size>{9});
    }
    return place < known.size() ? known[place] : made[place - known.size()];
}

namespace {

ledger::Value itemFor(const Referable& known, cellar::FieldType type, std::int64_t least,
                      std::int64_t most, Input& input)
{
    switch (type) {
        case cellar::FieldType::Integer:
            return numberNear(least, most, input);
        case cellar::FieldType::Flag:
            return input.flag();
        case cellar::FieldType::Bytes: {
            if (least == EntryId::size && input.flag()) {
                return known.entry(input.byte());
            }
            if (least == SubjectId::size && input.flag()) {
                return known.subject(input);
            }
            const ByteView bytes = input.bytes(input.below(40));
            return Bytes(bytes.begin(), bytes.end());
        }
        case cellar::FieldType::Text: {
            static constexpr std::array words = {"oak",    "A17-3K", "rum", "clean",
                                                 "colour", "7K2Q",   "a"};
            const std::size_t which = input.below(2 * words.size());
            const std::string typed = which < words.size() ? words[which] : input.text(40);
            return isUtf8(typed) ? typed : std::string(words[0]);
        }
        case cellar::FieldType::List:
            break;
    }
    return {};
}

ledger::Value valueFor(const Referable& known, std::uint32_t field, Input& input)
{
    const cellar::FieldSpec* spec = cellar::findField(field);
    const std::size_t how = input.below(16);
    if (spec == nullptr || how == 0) {  // of any type
        return itemFor(known, static_cast<cellar::FieldType>(input.below(5)), 0, 1000, input);
    }
    if (spec->type != cellar::FieldType::List) {
        return itemFor(known, spec->type, spec->least, spec->most, input);
    }
    ledger::List rows;
    for (std::size_t count = input.below(4); count > 0; --count) {
        ledger::List row;
        for (const cellar::ItemColumn& column : spec->items) {
            row.push_back(input.below(16) == 1
                              ? ledger::Value()
                              : itemFor(known, column.type, column.least, column.most, input));
        }
        if (how == 1) {
            row.emplace_back(std::int64_t{1});
        }
        rows.emplace_back(std::move(row));
    }
    return rows;
}

}  // namespace

Bytes forgedBody(std::string_view kind, const Referable& known, Input& input)
{
    ledger::Fields fields;
    const auto kinds = cellar::allKinds();
    const cellar::KindSpec* spec = cellar::findKind(kind);
    if (spec == nullptr) {  // a correction has the fields of what it corrects
        spec = &kinds[input.below(kinds.size())];
    }
    const std::size_t how = input.below(8);
    for (const cellar::KindField& field : spec->fields) {
        if ((field.required && how != 0) || input.below(3) == 1) {
            const auto number = static_cast<std::uint32_t>(field.field);
            fields[number] = valueFor(known, number, input);
        }
    }
    for (std::size_t more = how == 1 ? input.below(4) : 0; more > 0; --more) {
        const auto number = static_cast<std::uint32_t>(input.below(120));
        fields[number] = valueFor(known, number, input);
    }
    return ledger::encodeFields(fields);
}

}  // namespace spile::fuzz
