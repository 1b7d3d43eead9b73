#pragma once

#include "core/base/ids.hpp"
#include "core/ledger/entry.hpp"
#include "tests/fuzz/forged_body.hpp"
#include "tests/fuzz/memory_cellars.hpp"
#include "tests/support/day_file.hpp"

#include <map>
#include <vector>

/// Alters day files as who has the devices' keys can: records, header and members are what an input
/// says, and chains, hashes and signatures fit them again.
namespace spile::fuzz {

class Forger {
public:
    explicit Forger(MemoryCellars& cellars);

    /// Return the day file that `input` describes.
    [[nodiscard]] Bytes forge(Input& input);

private:
    struct Record {
        ledger::Entry core;
        Bytes body;
        std::vector<std::size_t> overwrites;  // places among what is known
        std::optional<std::size_t> target;
    };
    struct Chain {
        std::uint64_t seq = 0;
        EntryId head;
    };

    [[nodiscard]] std::vector<Record> recordsOf(const Bytes& dayFile);
    void edit(std::vector<Record>& records, Input& input);
    void editCore(Record& record, Input& input);
    void editPlace(Record& record, Input& input);
    void editReferences(Record& record, Input& input);
    [[nodiscard]] Record newRecord(Input& input);
    void signAll(std::vector<Record>& records, ledger::BundleHeader& header,
                 std::vector<ledger::SignedEntry>& made, Input& input);
    void editHeader(ledger::BundleHeader& header, Input& input);
    [[nodiscard]] const ledger::SigningKey* keyOf(const DeviceId& device) const;

    MemoryCellars& cellars_;
    Referable known_;
    std::map<DeviceId, std::vector<Chain>> chains_;  // where a device's chain can go on, or fork
};

}  // namespace spile::fuzz
