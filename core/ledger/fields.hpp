#pragma once

#include "core/base/bytes.hpp"
#include "core/base/ids.hpp"
#include "core/base/result.hpp"

#include <cstdint>
#include <map>
#include <string>
#include <variant>
#include <vector>

namespace spile::ledger {

struct Value;
using List = std::vector<Value>;

/// One value of an entry's body: nothing, a flag, an integer, text, bytes or a list of values.
/// There are no floats: a quantity is a scaled integer, its unit in the name of its field.
struct Value {
    std::variant<std::monostate, bool, std::int64_t, std::string, Bytes, List> held;

    Value() = default;
    template <class T>
    Value(T value) : held(std::move(value))  // NOLINT(google-explicit-constructor): a plain holder
    {
    }
    template <class Kind, std::size_t N>
    Value(const ByteId<Kind, N>& id)  // NOLINT(google-explicit-constructor): ids are bytes
        : held(Bytes(id.bytes().begin(), id.bytes().end()))
    {
    }

    // The copy is made outside of the variant: that of libstdc++ 12 takes itself for never empty
    // where it holds strings and vectors, and destroys what is not there when a copy finds no
    // memory.
    Value(const Value& other)
    {
        std::visit(
            [this](const auto& value) {
                auto copy = value;
                held = std::move(copy);
            },
            other.held);
    }
    Value& operator=(const Value& other)
    {
        Value copy(other);
        held = std::move(copy.held);
        return *this;
    }
    Value(Value&&) = default;
    Value& operator=(Value&&) = default;
    ~Value() = default;

    [[nodiscard]] bool isNull() const { return std::holds_alternative<std::monostate>(held); }
    /// The value if it is of type T, else a null pointer.
    template <class T>
    [[nodiscard]] const T* as() const
    {
        return std::get_if<T>(&held);
    }
    friend bool operator==(const Value&, const Value&) = default;
};

/// A body: values by the number of their field (cellar/field.hpp has the table).
using Fields = std::map<std::uint32_t, Value>;

/// Return `fields` as a canonical CBOR map with the field numbers as keys.
[[nodiscard]] Bytes encodeFields(const Fields& fields);

/// Read what encodeFields() wrote.
///
/// Errors    Damaged if it is not that, byte for byte.
[[nodiscard]] Result<Fields> decodeFields(ByteView body);

}  // namespace spile::ledger
