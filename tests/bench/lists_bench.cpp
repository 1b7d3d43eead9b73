// The lists at 100,000 barrels, beside the same at 1,000: they are read by index, so the size of
// the cellar should not show.
#include "core/cellar/kind.hpp"
#include "core/cellar/queries.hpp"
#include "core/scan/barrel_code.hpp"
#include "tests/bench/report.hpp"
#include "tests/support/test_device.hpp"

namespace {

using namespace spile;

constexpr int rounds = 200;
constexpr int page = 50;

ledger::NewEntry entryOf(std::string_view kind, const SubjectId& subject)
{
    ledger::NewEntry entry;
    entry.kind = kind;
    entry.subject = subject;
    return entry;
}

void set(ledger::NewEntry& entry, cellar::Field field, ledger::Value value)
{
    entry.fields[static_cast<std::uint32_t>(field)] = std::move(value);
}

struct Filled {
    support::TestDevice device;
    std::unique_ptr<cellar::Cellar> cellar;
    std::vector<std::string> codes;

    Filled(std::uint64_t seed, int barrels) : device(seed), cellar(device.newCellar())
    {
        constexpr int atOnce = 2000;
        for (int done = 0; done < barrels;) {
            auto change = cellar->ledger().change();
            bench::must(change);
            for (int i = 0; i < std::min(atOnce, barrels); ++i, ++done) {
                device.clock.pass(std::chrono::minutes(1));
                add(*change);
            }
            bench::must(change->commit());
        }
    }

    void add(ledger::Change& change)
    {
        const SubjectId barrel = device.ids.next();
        codes.push_back(scan::randomCode(cellar->identity().mark, device.random));
        ledger::NewEntry registered = entryOf("barrel", barrel);
        set(registered, cellar::Field::Code, codes.back());
        set(registered, cellar::Field::Mark, std::string("Rum 3"));
        ledger::NewEntry fill = entryOf("fill", barrel);
        set(fill, cellar::Field::VolumeMl, std::int64_t{190'000});
        bench::must(change.record(std::move(registered)));
        bench::must(change.record(std::move(fill)));
    }

    [[nodiscard]] bench::Times firstPage()
    {
        return timed([&](int) { bench::must(cellar::barrels(cellar->database(), {}, page)); });
    }
    [[nodiscard]] bench::Times duePage()
    {
        return timed([&](int) {
            bench::must(cellar::barrelsDue(cellar->database(),
                                           device.clock.now() + std::chrono::days(2),
                                           {instantFromMs(0), {}}, page));
        });
    }
    [[nodiscard]] bench::Times byCode()
    {
        return timed([&](int i) {
            const auto& code = codes.at(static_cast<std::size_t>(i) * 7919 % codes.size());
            bench::must(cellar::barrelsWithCode(cellar->database(), code));
        });
    }

    template <class Work>
    [[nodiscard]] static bench::Times timed(Work work)
    {
        bench::Times times;
        for (int i = 0; i < rounds; ++i) {
            times.add([&] { work(i); });
        }
        return times;
    }
};

void run()
{
    Filled small(41, 1000);
    bench::Times filling;
    std::unique_ptr<Filled> large;
    filling.add([&] { large = std::make_unique<Filled>(42, 100'000); });
    bench::title("Lists of " + std::to_string(page) + " at 100,000 barrels, beside 1,000");
    bench::row("register and fill the 100,000", filling);
    bench::row("first page, 1,000", small.firstPage());
    bench::row("first page, 100,000", large->firstPage(), small.firstPage(), "<= 1.5");
    bench::row("due page, 100,000", large->duePage(), small.duePage(), "<= 1.5");
    bench::row("by code, 100,000", large->byCode(), small.byCode(), "<= 1.5");
}

}  // namespace

int main() { return bench::guarded(run); }
