// The app's start, from exec to the first frame that shows the due list, on the demo's cellar grown
// to 2,000 barrels, beside an empty Qt Quick window: processor time, user and system, of 15 starts
// each, one of the one after one of the other.
#include "demo/cellar/growing.hpp"
#include "demo/cellar/world.hpp"
#include "platform/system/disk_file_system.hpp"
#include "tests/bench/report.hpp"
#include "tests/support/command.hpp"
#include "tests/support/temp_folder.hpp"

namespace spile {

namespace {

constexpr int starts = 15;
constexpr std::size_t barrels = 2000;
constexpr std::uint64_t seed = 7;

// What a program that ends at its first frame says of its processor time.
double cpuSeconds(const std::string& program, const std::vector<std::string>& arguments)
{
    const support::Ended ended = support::run(program, arguments);
    double milliseconds = 0;
    if (ended.exit != 0 || std::sscanf(ended.out.c_str(), "cpu_ms %lf", &milliseconds) != 1) {
        throw std::runtime_error(program + ": " + ended.out + ended.err);
    }
    return milliseconds / 1e3;
}

void run()
{
    const support::TempFolder folder;
    system::DiskFileSystem files;
    const Path cellar = folder.path() / "desk.cellar";
    {
        auto world = demo::makeWorld(files, cellar, folder.path(), seed, {});
        bench::must(world);
        const std::size_t more = barrels - (*world)->barrelCount();
        bench::must(demo::growCellar(*(*world)->desk().cellar, more, seed));
    }
    bench::Times empty, app;
    const std::vector<std::string> arguments{"--cellar", cellar.string(), "--quit-at-first-rows"};
    cpuSeconds(SPILE_APP, arguments);  // the first writes Qt's cache of compiled QML
    for (int i = 0; i < starts; ++i) {
        empty.addSeconds(cpuSeconds(SPILE_EMPTY_WINDOW, {}));
        app.addSeconds(cpuSeconds(SPILE_APP, arguments));
    }
    bench::title("Start to the first rows, processor time, 2,000 barrels");
    bench::row("an empty Qt Quick window", empty);
    bench::row("the app, its due list shown", app, empty, "<= 1.5");
}

}  // namespace

}  // namespace spile

int main() { return spile::bench::guarded(spile::run); }
