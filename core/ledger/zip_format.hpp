#pragma once

#include "core/base/bytes.hpp"
#include "core/base/ids.hpp"
#include "core/base/result.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_set>

/// The records of a ZIP file, as zip.hpp describes it.
namespace spile::ledger {

/// Files are read and written in pieces of so many bytes.
inline constexpr std::size_t chunkSize = std::size_t{1} << 16U;

/// One member of an archive.
struct ZipMember {
    std::string name;
    std::uint64_t size = 0;
    std::uint32_t crc = 0;
    std::uint64_t offset = 0;  ///< of its local header; its bytes follow that at once
};

/// Where the central directory lies and how many members it names.
struct ZipEnd {
    std::uint64_t members = 0;
    std::uint64_t offset = 0;
    std::uint64_t size = 0;
};

/// The names of one archive: what every system can unpack into files, each apart from the others.
///
/// 1 to 120 of a-z A-Z 0-9 . _ / - in segments that are neither empty nor "." nor ".."; no two
/// that differ in case only; none that is also the folder of another.
class ZipNames {
public:
    /// Errors    Malformed for the name itself, Conflict with one that was added before.
    [[nodiscard]] Result<void> add(std::string_view name);

private:
    std::unordered_set<std::string> files_, folders_;  ///< in lower case
};

/// Return the header that stands before the bytes of `member`.
[[nodiscard]] Bytes encodeLocalHeader(const ZipMember& member);
/// Return the entry of `member` in the central directory.
[[nodiscard]] Bytes encodeCentralEntry(const ZipMember& member);
/// Return all that follows the central directory.
[[nodiscard]] Bytes encodeEnd(const ZipEnd& end);

inline constexpr std::size_t zipLongestEnd = 98;
inline constexpr std::size_t zipLongestCentralEntry = 46 + 120 + 28;

/// Read the end records from `tail`, the last bytes (up to zipLongestEnd) of a file.
///
/// Errors    Damaged unless `tail` ends with what encodeEnd() makes.
[[nodiscard]] Result<ZipEnd> decodeEnd(ByteView tail);
/// Read the entry of the central directory that `rest` begins with.
///
/// Errors    Unsupported for features we do not take; Damaged unless it is what
///           encodeCentralEntry() makes.
[[nodiscard]] Result<ZipMember> decodeCentralEntry(ByteView rest);

}  // namespace spile::ledger
