#pragma once

#include "core/base/file_system.hpp"
#include "core/base/key_store.hpp"

namespace spile::system {

/// Keys in files that only their owner can read: `device.key` and `owner.key` in one folder, each
/// of 64 hexadecimal digits and a line end.
///
/// Errors    load(): Damaged if the file has another form; Storage if it may not be read.
///           save(): those of FileSystem besides Conflict; a key that was refused is not there.
class FileKeyStore final : public KeyStore {
public:
    /// `files` must outlive the store. `folder` is made when the first key is saved.
    FileKeyStore(FileSystem& files, Path folder) : files_(files), folder_(std::move(folder)) {}

    [[nodiscard]] Result<std::optional<KeySeed>> load(KeyName name) override;
    [[nodiscard]] Result<void> save(KeyName name, const KeySeed& seed) override;
    [[nodiscard]] Result<void> turnToNext() override;

private:
    FileSystem& files_;
    Path folder_;
};

}  // namespace spile::system
