// A lot whose beer passed 1,000 barrels in ten generations, traced up and down.
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "core/trace/trace.hpp"
#include "tests/bench/report.hpp"
#include "tests/support/test_device.hpp"

namespace {

using namespace spile;

constexpr int generations = 10;
constexpr int barrelsEach = 100;
constexpr int rounds = 20;

template <class T>
T made(Result<T> result)
{
    bench::must(result);
    return std::move(*result);
}

// Each generation: a hundred barrels are brought together in a tank, of which the next hundred are
// filled.
struct Line {
    support::TestDevice device{5};
    std::unique_ptr<cellar::Cellar> cellar = device.newCellar();
    SubjectId batch = made(cellar::registerBatch(*cellar, {"First"}));
    EntryId package;

    Line()
    {
        std::optional<SubjectId> lot;
        for (int generation = 0; generation < generations; ++generation) {
            const SubjectId next =
                made(cellar::registerLot(*cellar, {.name = "Lot " + std::to_string(generation)}));
            for (int i = 0; i < barrelsEach; ++i) {
                pass(lot, next);
            }
            lot = next;
        }
        package = made(cellar::recordPackage(
            *cellar,
            {.lot = *lot, .lotCode = "330A", .packages = {{"keg 30 L", litres(30), 100}}}));
    }

    void pass(const std::optional<SubjectId>& from, const SubjectId& to)
    {
        const auto barrel = made(cellar::registerBarrel(*cellar, {.spirit = "rum"})).barrel;
        made(cellar::recordFill(*cellar, {.barrel = barrel,
                                          .batch = from ? std::nullopt : std::optional(batch),
                                          .volume = litres(190),
                                          .lot = from}));
        device.clock.pass(std::chrono::hours(1));
        made(cellar::recordTransfer(*cellar, {.lot = to,
                                              .from = barrel,
                                              .volume = litres(195),
                                              .alcoholByVolume = 0.11,
                                              .specificGravity = 1.02}));
    }
};

void traces()
{
    Line line;
    bench::Times up;
    bench::Times down;
    std::size_t stays = 0;
    std::size_t reached = 0;
    for (int i = 0; i < rounds; ++i) {
        up.add([&] {
            stays = made(trace::upFromPackage(line.cellar->database(), line.package)).stays.size();
        });
        down.add([&] {
            reached =
                made(trace::down(line.cellar->database(), {trace::Start::What::Batch, line.batch}))
                    .barrels.size();
        });
    }
    bench::title("trace: 1,000 barrels, ten generations");
    bench::row("up from packages, " + std::to_string(stays) + " stays (goal 50 ms)", up);
    bench::row("down from a batch, " + std::to_string(reached) + " stays (goal 50 ms)", down);
}

}  // namespace

int main() { return bench::guarded(traces); }
