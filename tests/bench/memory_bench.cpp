// How much memory a process needs at most: each piece of work in a process of its own, so that the
// making of what it works on does not count.
#include "core/base/simulated.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "tests/bench/grown_cellar.hpp"
#include "tests/bench/own_process.hpp"
#include "tests/bench/report.hpp"
#include "tests/bench/whole_cellar.hpp"
#include "tests/support/temp_folder.hpp"

#include <cstring>

namespace {

using namespace spile;
using bench::must;

constexpr std::int64_t entries = 100'000;
constexpr int photos = 250;
constexpr std::size_t photoBytes = 2'000'000;

// A cellar of 100,000 entries and 500 MB of photos.
void make(const Path& folder)
{
    bench::GrownCellar grown(folder);
    grown.growTo(entries);
    SeededRandom random(71);
    Bytes picture(photoBytes);
    auto change = grown.cellar().ledger().change();
    must(change);
    for (int i = 0; i < photos; ++i) {
        random.fill(picture);
        const auto hash = grown.cellar().ledger().photos().add(picture);
        must(hash);
        auto entry =
            cellar::photoEntry(bench::GrownCellar::barrel(i), {*hash, picture.size()}, "head", {});
        must(entry);
        must(change->record(std::move(*entry)));
    }
    must(change->commit());
}

void runStep(const Path& folder, const std::string& step)
{
    if (step == "make") {
        make(folder);
    } else {
        bench::runWhole(folder, step);
    }
    bench::tell("peak MB", bench::peakMemoryMb());
}

void runAll()
{
    const support::TempFolder folder;
    const auto peakOf = [&](const std::string& step) {
        return bench::inOwnProcess("step " + folder.path().string() + " " + step).at("peak MB");
    };
    peakOf("make");
    bench::title("Peak memory of a process: " + std::to_string(entries) +
                 " entries and 500 MB of "
                 "photos");
    for (const auto& [step, name, goal] :
         {std::tuple{"hand-out", "hand all of it out", "< 256 MB"},
          std::tuple{"join", "join with it: take all of it in", "< 150 MB"},
          std::tuple{"check", "check all of it", "< 256 MB"}}) {
        std::printf("  %-44s %6.1f MB  goal %s\n", name, peakOf(step), goal);
    }
}

}  // namespace

int main(int count, char** arguments)
{
    try {
        if (count == 4 && std::strcmp(arguments[1], "step") == 0) {
            runStep(arguments[2], arguments[3]);
        } else {
            runAll();
        }
        return EXIT_SUCCESS;
    } catch (const std::exception& error) {
        std::fprintf(stderr, "bench failed: %s\n", error.what());
        return EXIT_FAILURE;
    }
}
