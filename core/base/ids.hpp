#pragma once

#include "core/base/bytes.hpp"

#include <algorithm>
#include <array>
#include <compare>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace spile::inline base {

/// A fixed number of bytes that names one kind of thing; ids of different kinds do not mix.
template <class Kind, std::size_t N>
class ByteId {
public:
    static constexpr std::size_t size = N;

    constexpr ByteId() = default;  ///< all zeros
    constexpr explicit ByteId(const std::array<std::uint8_t, N>& bytes) : bytes_(bytes) {}

    /// None unless `bytes` has exactly N bytes.
    [[nodiscard]] static std::optional<ByteId> fromBytes(ByteView bytes)
    {
        if (bytes.size() != N) {
            return std::nullopt;
        }
        ByteId id;
        std::copy(bytes.begin(), bytes.end(), id.bytes_.begin());
        return id;
    }
    /// None unless `hex` is exactly 2 N hexadecimal digits.
    [[nodiscard]] static std::optional<ByteId> fromHex(std::string_view hex)
    {
        const auto bytes = base::fromHex(hex);
        return bytes ? fromBytes(*bytes) : std::nullopt;
    }

    [[nodiscard]] ByteView bytes() const { return bytes_; }
    [[nodiscard]] std::string hex() const { return toHex(bytes_); }
    [[nodiscard]] bool isZero() const { return *this == ByteId(); }
    friend auto operator<=>(const ByteId&, const ByteId&) = default;

private:
    std::array<std::uint8_t, N> bytes_{};
};

using SubjectId = ByteId<struct SubjectKind, 16>;  ///< barrel, batch, person, ...: a UUIDv7
using DeviceId = ByteId<struct DeviceKind, 16>;    ///< first 16 bytes of SHA-256(public key)
using CellarId = ByteId<struct CellarKind, 16>;    ///< the same of the owner's public key
using EntryId = ByteId<struct EntryKind, 32>;      ///< SHA-256 of the entry's core
using Sha256 = ByteId<struct Sha256Kind, 32>;      ///< of a photo, a body or a file

/// Hash for unordered containers; ids are random or hashes, so their first bytes are spread.
struct IdHash {
    template <class Kind, std::size_t N>
    std::size_t operator()(const ByteId<Kind, N>& id) const
    {
        std::size_t h = 0;
        for (const std::uint8_t byte : id.bytes()) {
            h = (h ^ byte) * 1099511628211ULL;
        }
        return h;
    }
};

}  // namespace spile::inline base
