#pragma once

#include "core/base/file_system.hpp"
#include "core/ledger/zip_format.hpp"

#include <functional>
#include <unordered_map>
#include <vector>

/// Our own ZIP: members stored as they are, one form only, so that the same members always make
/// the same bytes and a reader has nothing to guess. Any other program can open it.
///
/// Source    PKWARE APPNOTE.TXT 6.3.9: sections 4.3.7 (local header), 4.3.12 (central directory),
///           4.3.14 to 4.3.16 (end records), 4.5.3 (zip64); from memory, checked against libzip
///           and unzip in tests/unit/zip_test.cpp.
namespace spile::ledger {

/// Writes an archive from its first byte to its last.
///
/// After an error the archive is of no use: neither add to it nor finish it. The caller syncs.
class ZipWriter {
public:
    /// `out` must be empty and outlive the writer.
    explicit ZipWriter(OutputFile& out) : out_(out) {}

    /// Add a member and return its SHA-256.
    ///
    /// Errors    Malformed or Conflict for a name that ZipNames refuses; those of OutputFile.
    [[nodiscard]] Result<Sha256> addBytes(std::string_view name, ByteView bytes);
    static constexpr std::uint64_t readAtOnce = std::uint64_t{8} << 20U;
    /// Add all bytes of `file`. A file larger than that is read twice, since the checksum stands
    /// before the bytes, so as not to be held in memory.
    ///
    /// Errors    as above, and Conflict if the file changed in between.
    [[nodiscard]] Result<Sha256> addFile(std::string_view name, InputFile& file);
    /// Write the directory. Nothing may be added after it.
    [[nodiscard]] Result<void> finish();
    /// Return how many bytes were written so far.
    [[nodiscard]] std::uint64_t size() const { return size_; }

private:
    [[nodiscard]] Result<void> begin(ZipMember member);
    [[nodiscard]] Result<void> write(ByteView bytes);

    OutputFile& out_;
    std::uint64_t size_ = 0;
    std::vector<ZipMember> members_;
    ZipNames names_;
};

struct ZipLimits {
    std::uint64_t maxBytes = std::uint64_t{1} << 40U;  ///< of the whole file
    std::uint64_t maxMembers = 20'000;
};

/// Reads an archive that is, byte for byte, what ZipWriter makes of some members.
///
/// Open() checks all but the members' own bytes; forEachChunk() checks those.
class ZipReader {
public:
    /// `file` must outlive the reader.
    ///
    /// Errors    TooLarge over a limit; Unsupported for what ZIP knows and we do not take
    ///           (compression, encryption, links, ...); Damaged for all else. `subject` is the
    ///           member or "archive", `value` what is wrong. Those of InputFile.
    [[nodiscard]] static Result<ZipReader> open(InputFile& file, const ZipLimits& limits = {});

    /// The members in the order of their bytes.
    [[nodiscard]] const std::vector<ZipMember>& members() const { return members_; }
    /// Return the member of that name, or null; it lives as long as the reader stays in place.
    [[nodiscard]] const ZipMember* find(const std::string& name) const;
    /// Fill `into` with the bytes of `member` from `offset` on. Does not check them.
    ///
    /// Errors    OutOfRange beyond the member's end; those of InputFile.
    [[nodiscard]] Result<void> readAt(const ZipMember& member, std::uint64_t offset,
                                      std::span<std::uint8_t> into) const;

    using Consume = std::function<Result<void>(ByteView)>;
    /// Give all bytes of `member` to `consume`, in pieces. Only its success says that they are
    /// sound: the checksum comes last.
    ///
    /// Errors    Damaged if the checksum differs; those of `consume` and of InputFile.
    [[nodiscard]] Result<void> forEachChunk(const ZipMember& member, const Consume& consume) const;
    /// Return all bytes of `member`, checked.
    ///
    /// Errors    TooLarge if it has more than `maxBytes`; else as forEachChunk().
    [[nodiscard]] Result<Bytes> readWhole(const ZipMember& member, std::uint64_t maxBytes) const;

private:
    explicit ZipReader(InputFile& file) : file_(&file) {}

    InputFile* file_;
    std::vector<ZipMember> members_;
    std::unordered_map<std::string, std::size_t> places_;  ///< in members_, by name
};

}  // namespace spile::ledger
