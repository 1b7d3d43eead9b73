// What a cellar of a given size costs: a day of all phones taken in, a barrel's page opened, the
// list of what is due, one record, a store of an earlier version, the file and the memory, at
// 100,000, 1,000,000 and 10,000,000 entries. Not one of the benches that run each time: it takes an
// hour or more and 15 GB of disk.
//   growth FOLDER [ENTRIES...]    FOLDER must not exist; it is removed at the end
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/flights.hpp"
#include "core/cellar/queries.hpp"
#include "tests/bench/grown_cellar.hpp"
#include "tests/bench/own_process.hpp"
#include "tests/bench/report.hpp"
#include "tests/bench/whole_cellar.hpp"
#include "tests/support/old_store.hpp"

#include <cstring>

namespace {

using namespace spile;
using bench::must;

constexpr int rounds = 200;

Path dayFile(const Path& folder) { return folder / "day.spile"; }

void make(const Path& folder, std::int64_t entries)
{
    bench::GrownCellar grown(folder);
    bench::Times growing;
    growing.add([&] { grown.growTo(entries); });
    grown.writeDay(dayFile(folder));
    bench::tell("making", growing.median());
    bench::tell("barrels", static_cast<double>(grown.barrels()));
    bench::tell("MB", static_cast<double>(
                          std::filesystem::file_size(grown.cellar().ledger().folder().database())) /
                          1e6);
}

void takeDay(const Path& folder)
{
    support::RealDevice device(folder);
    auto cellar = device.openOrMake();
    must(cellar);
    bench::Times taking;
    taking.add([&] {
        const auto taken = cellar::takeIn(**cellar, dayFile(folder));
        must(taken);
        if (taken->added != bench::phones * bench::recordsOfPhone) {
            throw std::runtime_error("the day was not taken in");
        }
    });
    bench::tell("day", taking.median());
    bench::tell("day, processor", taking.processor());
    bench::tell("day, peak MB", bench::peakMemoryMb());
    must(device.files.remove(dayFile(folder)));
}

// What BarrelViewModel reads when a barrel is opened.
void openBarrel(cellar::Cellar& cellar, const SubjectId& barrel)
{
    ledger::Database& database = cellar.database();
    const auto row = cellar::barrelById(database, barrel);
    must(row);
    if (!*row) {
        throw std::runtime_error("a barrel is missing");
    }
    must(cellar::openSheets(cellar));
    must(cellar::openFlights(database, cellar.outside().clock.now(), std::nullopt));
    must(cellar::historyOf(database, barrel));
}

void look(const Path& folder)
{
    support::RealDevice device(folder);
    auto cellar = device.openOrMake();
    must(cellar);
    const std::int64_t barrels =
        *(**cellar).database().integer(0, "SELECT count(*) FROM state_barrel");
    bench::Times opening, due, drawing;
    for (std::int64_t i = 0; i < rounds; ++i) {
        // All over the cellar, none twice, not those of the day.
        const SubjectId barrel = bench::GrownCellar::barrel((i * barrels / rounds + 3) % barrels);
        opening.add([&] { openBarrel(**cellar, barrel); });
        due.add([&] {
            constexpr int page = 50;
            must(cellar::barrelsDue((**cellar).database(), device.clock.now(),
                                    {instantFromMs(0), {}}, page));
        });
        drawing.add([&] {
            must(cellar::recordDraw(
                **cellar, {.barrel = barrel, .volume = millilitres(1), .method = "sample hole"}));
        });
    }
    bench::tell("barrel", opening.median());
    bench::tell("barrel p99", opening.quantile(0.99));
    bench::tell("due", due.median());
    bench::tell("record", drawing.median());
    bench::tell("record p99", drawing.quantile(0.99));
    bench::tell("look, peak MB", bench::peakMemoryMb());
}

// Makes of the cellar what version 3 left behind.
void age(const Path& folder)
{
    support::RealDevice device(folder);
    auto cellar = device.openOrMake();
    must(cellar);
    ledger::Database& database = (**cellar).database();
    must(database.run("PRAGMA synchronous=OFF;"));
    must(database.run(support::backToVersion3));
    must(database.run("UPDATE meta SET value = 1 WHERE key = 'projection';"));
    must(database.eachOnce([](const ledger::Row&) { return Result<void>(); },
                           "PRAGMA wal_checkpoint(TRUNCATE)"));
}

// The start that brings it up to this version.
void renew(const Path& folder)
{
    support::RealDevice device(folder);
    const Path database = ledger::CellarFolder{device.cellarFolder}.database();
    const auto before = std::filesystem::file_size(database);
    bench::Times renewing;
    renewing.add([&] { must(device.openOrMake()); });
    bench::tell("renewing", renewing.median());
    bench::tell("renewing, peak MB", bench::peakMemoryMb());
    std::uintmax_t after = 0;
    for (const auto& file : std::filesystem::directory_iterator(device.cellarFolder)) {
        const std::string name = file.path().filename().string();
        after += name.starts_with("ledger") ? file.file_size() : 0;
    }
    bench::tell("renewing, disk", static_cast<double>(after) / static_cast<double>(before));
}

void whole(const Path& folder, const std::string& step)
{
    bench::Times times;
    times.add([&] { bench::runWhole(folder, step); });
    bench::tell(step, times.median());
    bench::tell(step + ", peak MB", bench::peakMemoryMb());
}

void row(const char* name, const std::vector<bench::Numbers>& points, const std::string& number,
         double scale, const char* goal)
{
    std::printf("  %-40s", name);
    for (const bench::Numbers& point : points) {
        const auto found = point.find(number);
        if (found == point.end()) {
            std::printf("%20s", "-");
            continue;
        }
        const double first = points.front().at(number);
        std::printf(" %12.3f (%4.2f)", found->second * scale, found->second / first);
    }
    std::printf("  %s\n", goal);
}

void report(const std::vector<bench::Numbers>& points)
{
    bench::title("Growth: at each size, and beside the first size");
    row("entries", points, "entries", 1, "");
    row("barrels", points, "barrels", 1, "");
    row("a day of 40,000 records taken in, s", points, "day", 1, "<= 1.5 of the first");
    row("  the same, processor time, s", points, "day, processor", 1, "");
    row("a barrel opened, ms", points, "barrel", 1e3, "<= 1.5 of the first");
    row("  the same, p99, ms", points, "barrel p99", 1e3, "");
    row("list of what is due, first page, ms", points, "due", 1e3, "");
    row("one draw recorded, ms", points, "record", 1e3, "");
    row("  the same, p99, ms", points, "record p99", 1e3, "");
    row("ledger.db, MB", points, "MB", 1, "");
    row("peak memory of the day, MB", points, "day, peak MB", 1, "< 256");
    row("peak memory of the rest, MB", points, "look, peak MB", 1, "< 256");
    row("all of it handed out, s", points, "hand-out", 1, "");
    row("  its peak memory, MB", points, "hand-out, peak MB", 1, "< 256");
    row("joined with all of it, s", points, "join", 1, "");
    row("  its peak memory, MB", points, "join, peak MB", 1, "< 256");
    row("all of it checked, s", points, "check", 1, "");
    row("  its peak memory, MB", points, "check, peak MB", 1, "< 256");
    row("brought up from version 3, s", points, "renewing", 1, "");
    row("  its peak memory, MB", points, "renewing, peak MB", 1, "");
    row("  files after it, of ledger.db before", points, "renewing, disk", 1, "");
    row("making the entries, s", points, "making", 1, "");
    std::fflush(stdout);
}

void runAll(const Path& folder, const std::vector<std::int64_t>& sizes)
{
    std::vector<bench::Numbers> points;
    for (const std::int64_t entries : sizes) {
        bench::Numbers point = {{"entries", static_cast<double>(entries)}};
        for (const std::string& step :
             {"make " + std::to_string(entries), std::string("take"), std::string("look"),
              std::string("age"), std::string("renew")}) {
            point.merge(bench::inOwnProcess("step " + folder.string() + " " + step));
        }
        points.push_back(std::move(point));
        report(points);
    }
    std::filesystem::remove_all(folder);
}

void runStep(const Path& folder, const std::string& step, const char* entries)
{
    if (step == "make" && entries != nullptr) {
        make(folder, std::stoll(entries));
    } else if (step == "take") {
        takeDay(folder);
    } else if (step == "look") {
        look(folder);
    } else if (step == "age") {
        age(folder);
    } else if (step == "renew") {
        renew(folder);
    } else {
        whole(folder, step);
    }
}

}  // namespace

int main(int count, char** arguments)
{
    try {
        if (count >= 4 && std::strcmp(arguments[1], "step") == 0) {
            runStep(arguments[2], arguments[3], count > 4 ? arguments[4] : nullptr);
            return EXIT_SUCCESS;
        }
        if (count < 2 || std::filesystem::exists(arguments[1])) {
            std::fprintf(stderr, "growth FOLDER [ENTRIES...], with a FOLDER that does not exist\n");
            return EXIT_FAILURE;
        }
        std::vector<std::int64_t> sizes;
        for (int i = 2; i < count; ++i) {
            sizes.push_back(std::stoll(arguments[i]));
        }
        runAll(arguments[1],
               sizes.empty() ? std::vector<std::int64_t>{100'000, 1'000'000, 10'000'000} : sizes);
        return EXIT_SUCCESS;
    } catch (const std::exception& error) {
        std::fprintf(stderr, "growth failed: %s\n", error.what());
        return EXIT_FAILURE;
    }
}
