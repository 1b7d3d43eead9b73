#pragma once

#include "core/base/file_system.hpp"
#include "core/ledger/zip.hpp"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace spile::support {

/// Names and bytes of the members of an archive, in their order.
using ZipContents = std::vector<std::pair<std::string, std::string>>;

/// A file of bytes in memory. `bytes` must outlive it.
class BytesFile final : public InputFile {
public:
    explicit BytesFile(ByteView bytes) : bytes_(bytes) {}
    [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }
    [[nodiscard]] Result<void> readAt(std::uint64_t offset, std::span<std::uint8_t> into) override;

private:
    ByteView bytes_;
};

/// A file that keeps what is appended.
class CollectingFile final : public OutputFile {
public:
    [[nodiscard]] Result<void> append(ByteView bytes) override;
    [[nodiscard]] Result<void> sync() override { return {}; }
    [[nodiscard]] const Bytes& bytes() const { return bytes_; }

private:
    Bytes bytes_;
};

/// Return what ZipWriter makes of `contents`; empty if it refuses them.
[[nodiscard]] Bytes zipOf(const ZipContents& contents);

/// Return an archive in ZipWriter's form, but with names that it would refuse.
[[nodiscard]] Bytes zipOfAnyNames(const ZipContents& contents);

/// Open `archive` and read every member, checked.
[[nodiscard]] Result<ZipContents> unzipped(ByteView archive, const ledger::ZipLimits& limits = {});

}  // namespace spile::support
