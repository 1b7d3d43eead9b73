#pragma once

#include "core/cellar/cellar.hpp"
#include "core/units/units.hpp"

#include <optional>

/// What the acts share: each is one transaction that has been made durable when it returns.
///
/// Errors of every act    OutOfRange or Malformed for a field (checkFields); NotFound if a subject
///                        it names is not in the records; Conflict if the state forbids it;
///                        StorageFull and Storage. In all of them nothing is saved.
namespace spile::cellar {

/// When it happened and who did it; both may be left out.
struct Circumstance {
    std::optional<ledger::EventTime> at = {};
    std::optional<SubjectId> person = {};
    std::string note = {};
};

/// Collects the fields of an entry; leaves out what is not there.
class FieldSet {
public:
    FieldSet() = default;
    explicit FieldSet(const Circumstance& circumstance);

    void set(Field field, ledger::Value value)
    {
        fields_[static_cast<std::uint32_t>(field)] = std::move(value);
    }
    void setText(Field field, const std::string& text)
    {
        if (!text.empty()) {
            set(field, text);
        }
    }
    template <class T>
    void setIfAny(Field field, const std::optional<T>& value)
    {
        if (value) {
            set(field, ledger::Value(*value));
        }
    }
    /// Set `value` times `scale`, rounded to the integer that the field holds.
    [[nodiscard]] Result<void> setScaled(Field field, const std::optional<double>& value,
                                         double scale);
    [[nodiscard]] Result<void> setVolume(Field field, const std::optional<Volume>& volume);
    [[nodiscard]] Result<void> setMass(Field field, const std::optional<Mass>& mass);
    [[nodiscard]] Result<void> setLength(Field field, const std::optional<Length>& length);
    [[nodiscard]] Result<void> setTemperature(Field field,
                                              const std::optional<Temperature>& temperature);

    [[nodiscard]] ledger::Fields take() { return std::move(fields_); }

private:
    ledger::Fields fields_;
};

/// Make the entry of an act; checks its fields by the table of kinds.
[[nodiscard]] Result<ledger::NewEntry> newEntry(std::string_view kind, const SubjectId& subject,
                                                FieldSet fields,
                                                const std::optional<ledger::EventTime>& at = {});

/// Record one entry in a transaction of its own.
[[nodiscard]] Result<EntryId> recordOne(Cellar& cellar, Result<ledger::NewEntry> entry);

/// Errors    NotFound if the records have no such barrel, person, ...
[[nodiscard]] Result<void> needSubject(Cellar& cellar, std::string_view kind,
                                       const SubjectId& subject);
[[nodiscard]] Result<void> needPerson(Cellar& cellar, const Circumstance& circumstance);

/// Errors    NotFound for an unknown barrel; Conflict if it holds no beer, as far as is known.
[[nodiscard]] Result<void> needFilled(Cellar& cellar, const SubjectId& barrel);

}  // namespace spile::cellar
