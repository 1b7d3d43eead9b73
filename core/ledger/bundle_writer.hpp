#pragma once

#include "core/base/file_system.hpp"
#include "core/base/job.hpp"
#include "core/ledger/bundle_format.hpp"
#include "core/ledger/photo_store.hpp"

#include <functional>

namespace spile::ledger {

/// What goes into a bundle. `entries` is called once and hands every entry of the header's ranges,
/// in their order, to the function it is given.
struct BundleContent {
    BundleHeader header;
    std::vector<PhotoRef> photos;
    std::string cellarName;
    std::function<Result<void>(const std::function<Result<void>(const SignedEntry&)>&)> entries;
};

/// Write a bundle to the new file `path`, durably when this returns, and return its identity.
/// The same content and key give the same bytes.
///
/// Errors    Conflict if `path` exists; StorageFull, Storage, Cancelled, and what `entries`
///           returns. A file that was begun is left for the caller to remove.
[[nodiscard]] Result<Sha256> writeBundle(FileSystem& files, const Path& path,
                                         const std::string& top, const BundleContent& content,
                                         const PhotoStore& photos, const SigningKey& key,
                                         const Job& job);

}  // namespace spile::ledger
