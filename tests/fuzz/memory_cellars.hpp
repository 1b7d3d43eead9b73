#pragma once

#include "core/base/id_source.hpp"
#include "core/base/simulated.hpp"
#include "core/cellar/cellar.hpp"
#include "tests/support/memory_file_system.hpp"
#include "tests/support/test_device.hpp"

#include <memory>
#include <vector>

struct sqlite3;

namespace spile::fuzz {

/// A desk; its phone, which has recorded what the desk has not seen; and a phone that joined, but
/// is not admitted.
class MemoryCellars {
public:
    MemoryCellars();
    ~MemoryCellars();
    MemoryCellars(const MemoryCellars&) = delete;
    MemoryCellars& operator=(const MemoryCellars&) = delete;

    /// The desk as it was at first, whatever was done with it since.
    [[nodiscard]] cellar::Cellar& renewDesk();
    [[nodiscard]] const CellarId& cellar() const { return cellar_; }
    /// The disk of the desk, apart from its database.
    [[nodiscard]] support::MemoryFileSystem& files() { return files_; }
    [[nodiscard]] const SimulatedClock& clock() const { return clock_; }

    /// Day files: of the phone for the desk; all that the phone holds; of the one not admitted.
    [[nodiscard]] const std::vector<Bytes>& dayFiles() const { return dayFiles_; }
    /// The keys of phone, desk, the phone that is not admitted, and owner.
    [[nodiscard]] const std::vector<ledger::SigningKey>& keys() const { return keys_; }

private:
    void keepDesk(support::TestDevice& device);

    SimulatedClock clock_{*fromIso("2025-09-01T08:00Z")};
    SeededRandom random_{1};
    Uuid7Source ids_{clock_, random_};
    support::MemoryKeyStore keysAtFirst_, keyStore_;  // a day file may make the desk take a new key
    support::MemoryFileSystem files_;
    std::unique_ptr<cellar::Cellar> desk_;
    sqlite3* atFirst_ = nullptr;
    CellarId cellar_;
    std::vector<Bytes> dayFiles_;
    std::vector<ledger::SigningKey> keys_;
};

}  // namespace spile::fuzz
