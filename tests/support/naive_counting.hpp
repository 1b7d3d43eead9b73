#pragma once

#include "tests/support/naive_cellar.hpp"

/// The part of the naive cellar that says which entries count, and how it looks at one.
namespace spile::support {

template <class T>
std::optional<T> valueOf(const ledger::Fields& fields, std::uint32_t number)
{
    const auto found = fields.find(number);
    const T* value = found == fields.end() ? nullptr : found->second.as<T>();
    return value == nullptr ? std::nullopt : std::optional(*value);
}

inline ledger::Fields fieldsOf(const NaiveEntry& entry)
{
    return ledger::decodeFields(entry.body).value_or(ledger::Fields());
}
inline DeviceId subjectDevice(const NaiveEntry& entry)
{
    return *DeviceId::fromBytes(entry.core.subject.bytes());
}

/// Fill in `linked` and `counted`.
void countNaively(const NaiveEntries& entries, const CellarId& cellar, const DeviceId& self,
                  NaiveCellar& said);

}  // namespace spile::support
