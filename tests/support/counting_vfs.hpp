#pragma once

#include <atomic>
#include <cstdint>
#include <functional>
#include <map>
#include <mutex>
#include <string>
#include <string_view>

namespace spile::support {

/// How often SQLite asked the disk for something, by file.
///
/// Each question takes the files whose name ends in `suffix`: "-wal" for the logs alone.
///
/// Threads   any number.
class VfsCounter {
public:
    struct Counts {
        std::uint64_t opens = 0;
        std::uint64_t reads = 0;
        std::uint64_t writes = 0;
        std::uint64_t syncs = 0;
        std::uint64_t unsynced = 0;  ///< writes since the last sync
    };

    void reset();
    /// Count syncs but do not ask the disk for them: for tests of other things, to be quick.
    void passSyncsOn(bool pass) { passSyncsOn_ = pass; }
    [[nodiscard]] bool passesSyncsOn() const { return passSyncsOn_; }
    /// Refuse to write, as a full disk does, while `full` says so. Set it before others use it.
    void fillDisk(std::function<bool()> full) { full_ = std::move(full); }
    [[nodiscard]] bool isFull() const { return full_ && full_(); }
    [[nodiscard]] std::uint64_t opens(std::string_view suffix = {}) const;
    [[nodiscard]] std::uint64_t reads(std::string_view suffix = {}) const;
    [[nodiscard]] std::uint64_t writes(std::string_view suffix = {}) const;
    [[nodiscard]] std::uint64_t syncs(std::string_view suffix = {}) const;
    /// How many writes the disk may still forget: those that no sync came after.
    [[nodiscard]] std::uint64_t unsynced(std::string_view suffix = {}) const;

    /// For the shim itself: count one call of the kind `member` on the file `name`.
    void count(const std::string& name, std::uint64_t Counts::*member);

private:
    [[nodiscard]] std::uint64_t sum(std::string_view suffix, std::uint64_t Counts::*member) const;

    std::function<bool()> full_;
    std::atomic<bool> passSyncsOn_{true};
    mutable std::mutex mutex_;
    std::map<std::string, Counts> files_;
};

/// Put a counting layer, named "counting", over the default VFS of SQLite and make it the default
/// of this process. Return its counter, the same at each call.
[[nodiscard]] VfsCounter& registerCountingVfs();

}  // namespace spile::support
