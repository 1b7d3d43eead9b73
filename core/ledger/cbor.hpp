#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"

#include <cstdint>
#include <string_view>

/// Deterministic CBOR: the one encoding of each value, so that equal records are equal bytes.
///
/// The profile is RFC 8949, section 4.2.1 (shortest heads, definite lengths, map keys in the
/// order of their bytes, none twice), without floats, tags and simple values other than false,
/// true and null. Text is UTF-8. Nesting is at most cborDepthMax.
namespace spile::ledger {

inline constexpr int cborDepthMax = 8;

/// Writes items one after the other; a map's or an array's items follow its head.
/// Requires the caller to write map keys in order.
class CborWriter {
public:
    void unsignedInteger(std::uint64_t value) { head(0, value); }
    void integer(std::int64_t value);
    void bytes(ByteView value);
    void text(std::string_view value);
    void array(std::size_t count) { head(4, count); }
    void map(std::size_t count) { head(5, count); }
    void boolean(bool value) { out_.push_back(value ? 0xf5 : 0xf4); }
    void null() { out_.push_back(0xf6); }
    /// Append an item that is encoded already.
    void raw(ByteView item) { out_.insert(out_.end(), item.begin(), item.end()); }

    [[nodiscard]] const Bytes& written() const { return out_; }
    [[nodiscard]] Bytes take() { return std::move(out_); }

private:
    void head(unsigned major, std::uint64_t argument);
    Bytes out_;
};

enum class CborType : std::uint8_t { Unsigned, Negative, Bytes, Text, Array, Map, Bool, Null };

/// Reads items one after the other, strictly: what CborWriter could not have written is Damaged.
/// What it returns looks into the bytes it was given.
///
/// Errors    Damaged, `subject` "record", at the first byte that breaks the profile, at an item
///           of another type than asked for, and at the end of the bytes.
class CborReader {
public:
    explicit CborReader(ByteView bytes) : rest_(bytes) {}

    [[nodiscard]] bool atEnd() const { return rest_.empty(); }
    [[nodiscard]] std::size_t left() const { return rest_.size(); }

    [[nodiscard]] Result<CborType> peek() const;
    [[nodiscard]] Result<std::uint64_t> unsignedInteger();
    [[nodiscard]] Result<std::int64_t> integer();
    [[nodiscard]] Result<ByteView> bytes();
    [[nodiscard]] Result<std::string_view> text();
    [[nodiscard]] Result<bool> boolean();
    [[nodiscard]] Result<void> null();
    /// Return how many items follow; never more than there are bytes left.
    [[nodiscard]] Result<std::size_t> array();
    /// Return how many pairs follow; their order is the caller's to check.
    [[nodiscard]] Result<std::size_t> map();
    /// Pass over one whole item, checked by the profile, and return its bytes.
    [[nodiscard]] Result<ByteView> item();

private:
    struct Head {
        unsigned major;
        std::uint64_t argument;
    };
    [[nodiscard]] Result<Head> head();
    [[nodiscard]] Result<std::uint64_t> argumentOf(unsigned major);
    [[nodiscard]] Result<ByteView> string(unsigned major);
    [[nodiscard]] Result<void> skip(int depth);
    [[nodiscard]] Result<void> skipItems(std::size_t count, int depth);
    [[nodiscard]] Result<void> skipPairs(std::size_t count, int depth);
    ByteView rest_;
};

}  // namespace spile::ledger
