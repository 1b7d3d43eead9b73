#pragma once

#include "core/base/bytes.hpp"
#include "core/base/file_system.hpp"

#include <array>
#include <atomic>
#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <set>
#include <string>
#include <vector>

/// What the disk was asked for, call by call, and what a loss of power would have left of it.
namespace spile::support {

struct DiskCall {
    enum class Kind : std::uint8_t {
        Create,
        Write,
        Truncate,
        Sync,
        Remove,
        Rename,
        SyncFolder,
        Acknowledge,  ///< no call: somebody was told that `bytes` is saved
    };
    Kind kind{};
    std::string path;  ///< from the folder that is recorded
    std::string to;    ///< of a rename
    std::uint64_t offset = 0;
    Bytes bytes;
    bool bySqlite = false;
};

/// Records what happens in a folder, by SQLite through its VFS and by others through its
/// FileSystem; all is passed on to the disk, but for syncs, which cost time and would change
/// nothing here.
///
/// Threads   any number.
class RecordedDisk {
public:
    RecordedDisk(Path folder, FileSystem& below);
    ~RecordedDisk();
    RecordedDisk(const RecordedDisk&) = delete;
    RecordedDisk& operator=(const RecordedDisk&) = delete;

    /// The name of the VFS, registered with SQLite while this lives.
    [[nodiscard]] const std::string& vfs() const { return name_; }
    [[nodiscard]] FileSystem& files() { return *files_; }
    void acknowledge(ByteView what);
    /// Let a call of SQLite's fail: the one after so many of its kind from now on, and all after it
    /// if it lasts.
    enum class Refuse : std::uint8_t { Write, Sync };
    void refuse(Refuse what, std::size_t after, bool lasting, bool full = false);
    /// How many of them there were since, and whether one was refused.
    [[nodiscard]] std::size_t asked() const { return asked_; }
    [[nodiscard]] bool refused() const { return refused_; }
    /// For the VFS: a path that lasts as long as this.
    [[nodiscard]] const Path& kept(const char* path);
    /// For the VFS: whether this call fails, and how.
    [[nodiscard]] std::optional<int> refusal(Refuse what);
    /// Note a call; nothing outside the folder is noted.
    void note(DiskCall call, const Path& path);

    [[nodiscard]] const std::vector<DiskCall>& calls() const { return calls_; }
    [[nodiscard]] const Path& folder() const { return folder_; }

private:
    struct Vfs;

    Path folder_;
    std::string name_;
    std::unique_ptr<Vfs> vfs_;
    std::unique_ptr<FileSystem> files_;
    std::mutex mutex_;
    std::vector<DiskCall> calls_;
    std::set<Path> paths_;
    struct Refusal {
        Refuse what;
        std::size_t after;
        bool lasting, full;
    };
    std::optional<Refusal> toRefuse_;
    std::atomic<std::size_t> asked_{0};
    std::atomic<bool> refused_{false};
};

/// What a loss of power leaves of what was not synced.
enum class Leaves : std::uint8_t {
    Nothing,
    All,
    Beginning,  ///< the first writes, the last of them torn
    Anything,   ///< of each sector of 512 bytes the old or the new
};
inline constexpr std::array allLeaves = {Leaves::Nothing, Leaves::All, Leaves::Beginning,
                                         Leaves::Anything};

struct Crash {
    std::size_t after = 0;  ///< so many calls were made
    Leaves leaves{};
    std::uint64_t seed = 0;
    bool lyingDisk = false;  ///< it says that it synced, and did not
};

/// Write into the empty folder `to` what `crash` leaves, `from` being a copy of the folder as it
/// was before the calls; empty if it was empty.
void writeCrashed(const std::vector<DiskCall>& calls, const Crash& crash, const Path& from,
                  const Path& to);

}  // namespace spile::support
