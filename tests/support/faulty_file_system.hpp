#pragma once

#include "core/base/file_system.hpp"

#include <array>
#include <functional>
#include <optional>

namespace spile::support {

/// What a FileSystem, or a file that it opened, can be asked for and refuse.
enum class FileCall : std::uint8_t {
    Open,
    Read,
    Create,
    Append,
    Sync,
    Rename,
    Remove,
    MakeFolder,
    SyncFolder,
    List,
    Lock
};
inline constexpr std::size_t fileCallKinds = 11;

/// One refusal to come.
struct Fault {
    std::optional<FileCall> call{};  ///< none: calls of every kind are counted together
    std::uint64_t at = 1;            ///< the first call is 1
    ErrorCode code = ErrorCode::Storage;
    bool lasting = false;  ///< refuse all later calls too, as a full disk or a dead process does
};

/// Passes every call on to another FileSystem, but for the one that a test chose.
///
/// A refused append() has written the first half of its bytes, as a real disk may have. Nothing
/// else that is refused has any effect. exists() cannot fail and is not counted.
class FaultyFileSystem final : public FileSystem {
public:
    explicit FaultyFileSystem(FileSystem& inner) : inner_(inner) {}

    /// Refuse what `fault` says, counted from now on, in place of what was said before.
    void failAt(const Fault& fault);
    /// Say that so much is free.
    void setFree(std::uint64_t bytes) { free_ = bytes; }
    /// Refuse to append, as a full disk does, while `full` says so. Set it before others use it.
    void fillWhile(std::function<bool()> full) { full_ = std::move(full); }
    /// Refuse nothing more of what failAt() said, and count from now on.
    void failNever();
    /// Return how many calls there were of this kind, or of all, since the last of the above.
    [[nodiscard]] std::uint64_t calls(std::optional<FileCall> call = {}) const;

    [[nodiscard]] Result<std::unique_ptr<InputFile>> open(const Path& path) override;
    [[nodiscard]] Result<std::unique_ptr<OutputFile>> create(const Path& path) override;
    [[nodiscard]] Result<std::unique_ptr<OutputFile>> createPrivate(const Path& path) override;
    [[nodiscard]] Result<void> rename(const Path& from, const Path& to) override;
    [[nodiscard]] Result<void> remove(const Path& path) override;
    [[nodiscard]] Result<void> makeFolder(const Path& path) override;
    [[nodiscard]] Result<void> syncFolder(const Path& path) override;
    [[nodiscard]] bool exists(const Path& path) override { return inner_.exists(path); }
    [[nodiscard]] Result<std::vector<std::string>> list(const Path& folder) override;
    [[nodiscard]] Result<std::uint64_t> freeBytes(const Path& folder) override
    {
        return free_ ? Result<std::uint64_t>(*free_) : inner_.freeBytes(folder);
    }
    [[nodiscard]] Result<std::unique_ptr<FileLock>> lock(const Path& path,
                                                         const std::string& holder) override;

    /// For the files it opened: count a call and refuse it if its turn has come.
    [[nodiscard]] Result<void> admit(FileCall call, const Path& path);

private:
    FileSystem& inner_;
    std::optional<std::uint64_t> free_;
    std::optional<Fault> fault_;
    std::function<bool()> full_;
    std::array<std::uint64_t, fileCallKinds> calls_{};
};

}  // namespace spile::support
