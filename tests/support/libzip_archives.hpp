#pragma once

#include "tests/support/zip_archives.hpp"

/// A second opinion on archives, by the library libzip. For tests only.
namespace spile::support {

/// Return the members of `archive` as libzip sees them under its strictest checks; empty and a
/// failed expectation if it refuses, or if they are not stored, or else `packed`.
[[nodiscard]] ZipContents libzipContents(ByteView archive, bool packed = false);

struct LibzipOptions {
    bool deflate = false;
    bool encrypt = false;
    const char* comment = "";
    unsigned unixMode = 0100644;
};

/// Return an archive of `contents` that libzip made.
[[nodiscard]] Bytes libzipArchive(const ZipContents& contents, const LibzipOptions& options = {});

}  // namespace spile::support
