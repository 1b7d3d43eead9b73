#pragma once

#include "core/base/id_source.hpp"
#include "core/base/outside.hpp"
#include "core/base/simulated.hpp"
#include "core/cellar/cellar.hpp"
#include "tests/support/memory_file_system.hpp"
#include "tests/support/memory_key_store.hpp"
#include "tests/support/memory_vfs.hpp"
#include "tests/support/small_cellar.hpp"

#include <memory>
#include <vector>

/// Devices of one cellar that live in memory, are made once, and are put back to their beginning
/// for each of thousands of histories.
namespace spile::support {

class MemoryFleet {
public:
    static constexpr std::size_t devices = 5;

    struct Member {
        SimulatedClock clock{start};
        SeededRandom random{0};
        Uuid7Source ids{clock, random};
        std::shared_ptr<MemoryKeyStore> keys;  // a copied device has the same
        Path folder;
        std::unique_ptr<cellar::Cellar> cellar;
        DatabaseImage made;

        [[nodiscard]] ledger::Ledger& ledger() const { return cellar->ledger(); }
        [[nodiscard]] ledger::Database& database() const { return cellar->database(); }
        [[nodiscard]] DatabaseImage image() const;
        /// Become what it was then; the cellar object goes on.
        void putBack(const DatabaseImage& image) const;
    };

    /// A desk that made the cellar, with the records of fillSmallCellar(), phones that joined and
    /// are not admitted, a copy of the folder of each, and a replica that records nothing.
    MemoryFleet();

    /// Put everything back; all clocks stand at `start` then, which makes ties.
    void putBack(std::uint64_t seed);

    [[nodiscard]] Member& device(std::size_t i) { return *members_[i]; }
    [[nodiscard]] Member& copyOf(std::size_t i) { return *members_[devices + i]; }
    [[nodiscard]] Member& replica() { return *members_.back(); }
    [[nodiscard]] const SmallCellar& small() const { return small_; }
    [[nodiscard]] const ledger::SigningKey& owner() const { return *owner_; }
    [[nodiscard]] MemoryFileSystem& files() { return files_; }

    /// Record an entry at `member` as a program does that knows more than this one: with any kind
    /// version and any key.
    EntryId recordAs(Member& member, const ledger::SigningKey& key, const ledger::NewEntry& entry,
                     std::uint32_t kindVersion);

    static constexpr Instant start = instantFromMs(1756713600000);

private:
    Member& add(const Path& folder, std::shared_ptr<MemoryKeyStore> keys);
    void introduceAll(Member& member);
    [[nodiscard]] Outside outside(Member& member);

    MemoryFileSystem files_;
    std::vector<std::unique_ptr<Member>> members_;
    SmallCellar small_;
    std::optional<ledger::SigningKey> owner_;
};

/// Return the value, or end the test with what went wrong.
template <class T>
T valueOrThrow(Result<T> made)
{
    if (!made) {
        throw std::runtime_error(textOf(made.error()));
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*made);
    }
}

}  // namespace spile::support
