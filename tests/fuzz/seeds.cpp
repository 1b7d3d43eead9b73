// Writes seeds for the fuzzers of the ledger's formats, from a real cellar: fuzz_seeds FOLDER.
// What fuzzing finds is added to them by `tests/fuzz/run --merge`.
#include "core/base/sha256.hpp"
#include "core/ledger/seal.hpp"
#include "tests/fuzz/memory_cellars.hpp"
#include "tests/support/day_file.hpp"

#include <filesystem>
#include <fstream>
#include <iostream>

namespace {

using namespace spile;

class Seeds {
public:
    explicit Seeds(Path folder) : folder_(std::move(folder)) {}

    // The input's first byte says what to do with the rest.
    void add(const std::string& target, std::uint8_t how, ByteView rest)
    {
        std::filesystem::create_directories(folder_ / target);
        Bytes bytes{how};
        bytes.insert(bytes.end(), rest.begin(), rest.end());
        std::ofstream file(folder_ / target / sha256(bytes).hex().substr(0, 16), std::ios::binary);
        file << asText(bytes);
    }

private:
    Path folder_;
};

void addEntries(Seeds& seeds, support::DayFile file)
{
    const std::string& sequence = file.member("data/entries/000001.cborseq");
    for (std::uint8_t how = 3; how <= 5; ++how) {
        seeds.add("entry", how, asBytes(sequence));
    }
    for (const ledger::SignedEntry& entry : file.entries()) {
        seeds.add("entry", 0, entry.body);
        seeds.add("entry", 1, entry.body);
        seeds.add("entry", 2, entry.core);
    }
}

// As bundle_fuzz.cpp reads them: the number of a name, two bytes of length, the content.
Bytes membersOf(const support::DayFile& file)
{
    const std::vector<std::string> names = {"data/bundle.cbor",
                                            "data/README.txt",
                                            "data/entries/000001.cborseq",
                                            "data/entries/000002.cborseq",
                                            "bagit.txt",
                                            "bag-info.txt",
                                            "manifest-sha256.txt",
                                            "tagmanifest-sha256.txt",
                                            "signature.cbor"};
    Bytes bytes;
    for (const auto& [name, content] : file.members) {
        const auto found = std::find(names.begin(), names.end(), name);
        bytes.push_back(static_cast<std::uint8_t>(found - names.begin()));
        bytes.push_back(static_cast<std::uint8_t>(content.size() >> 8U));
        bytes.push_back(static_cast<std::uint8_t>(content.size()));
        bytes.insert(bytes.end(), content.begin(), content.end());
    }
    return bytes;
}

void addDayFile(Seeds& seeds, const Bytes& archive)
{
    support::DayFile file(archive);
    addEntries(seeds, file);
    seeds.add("bundle", 0, archive);
    seeds.add("bundle", 1, membersOf(file));
    seeds.add("bundle", 3, membersOf(file));
    seeds.add("manifest", 0, asBytes(file.member(ledger::bag::manifest)));
    seeds.add("manifest", 0, asBytes(file.member(ledger::bag::tagManifest)));
    seeds.add("manifest", 1, asBytes(file.member(ledger::bag::header)));
    seeds.add("manifest", 2, asBytes(file.member(ledger::bag::signature)));
}

void addSealed(Seeds& seeds, SeededRandom& random, const Bytes& archive)
{
    support::MemoryFileSystem files;
    if ((*files.create("/plain"))->append(archive) &&
        ledger::seal(files, "/plain", "/sealed", "cold cellar", random, {})) {
        seeds.add("envelope", 0, *readWhole(files, "/sealed", 1U << 20U));
    }
    for (std::uint8_t pieces = 0; pieces < 3; ++pieces) {
        for (std::uint8_t edits = 0; edits < 3; ++edits) {
            Bytes how{1, pieces, 65, 20};  // salt, full pieces, what is in them, length of the last
            how.resize(24, 'a');
            how.push_back(edits);
            how.insert(how.end(), {0, 1, static_cast<std::uint8_t>(90 * pieces), edits, 1, 2});
            seeds.add("envelope", 1, how);
        }
    }
}

void addForgeries(Seeds& seeds, SeededRandom& random)
{
    for (std::uint8_t base = 0; base < 3; ++base) {
        seeds.add("importer", base, {});
        for (int i = 0; i < 10; ++i) {
            Bytes edits(200);
            random.fill(edits);
            edits[0] = static_cast<std::uint8_t>(1 + i);
            seeds.add("importer", base, edits);
        }
    }
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "usage: fuzz_seeds FOLDER\n";
        return 2;
    }
    Seeds seeds(argv[1]);
    fuzz::MemoryCellars cellars;
    for (const Bytes& dayFile : cellars.dayFiles()) {
        addDayFile(seeds, dayFile);
    }
    SeededRandom random(4);
    addSealed(seeds, random, cellars.dayFiles().front());
    addForgeries(seeds, random);
    return 0;
}
