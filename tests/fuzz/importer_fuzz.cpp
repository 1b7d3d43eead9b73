// Day files that a forger with the devices' keys makes, taken in by a desk. What is refused changes
// nothing; what is accepted adds nothing the second time, and the state is the one that the records
// come to when it is made anew.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/checking.hpp"
#include "tests/fuzz/forger.hpp"
#include "tests/support/small_cellar.hpp"

namespace {

using namespace spile;
using fuzz::Input;
using fuzz::require;
using support::textOf;

struct Standing {
    Sha256 root;
    std::int64_t entries = 0, waiting = 0, taken = 0;
    friend bool operator==(const Standing&, const Standing&) = default;
};

Standing standingOf(cellar::Cellar& cellar)
{
    const auto count = [&](std::string_view sql) { return *cellar.database().integer(-1, sql); };
    return {*cellar::stateRoot(cellar), count("SELECT count(*) FROM entry"),
            count("SELECT count(*) FROM waiting"), count("SELECT count(*) FROM taken_in")};
}

bool isRefusal(ErrorCode code)
{
    return code == ErrorCode::Damaged || code == ErrorCode::Unsupported ||
           code == ErrorCode::TooLarge || code == ErrorCode::Foreign;
}

void takeTwice(cellar::Cellar& desk, const Path& path)
{
    const Standing before = standingOf(desk);
    const auto taken = cellar::takeIn(desk, path);
    if (!taken) {
        require(isRefusal(taken.error().code), "refused with another error than a bad file's",
                textOf(taken.error()));
        require(standingOf(desk) == before, "refused, but not unchanged", textOf(taken.error()));
        return;
    }
    const Standing once = standingOf(desk);
    // What a desk records of itself that finds that its key has signed what it does not hold.
    const std::int64_t own = !taken->renewed ? 0 : taken->renewed->admitted ? 2 : 1;
    require(once.entries == before.entries + own + static_cast<std::int64_t>(taken->added),
            "other records were added than it says");
    const std::string problems = support::problemsOf(desk);
    require(problems.empty(), "the cellar is not sound", problems);
    const auto again = cellar::takeIn(desk, path);
    require(again.has_value(), "taken in once, then refused");
    require(again->added == 0 && again->photos == 0 && !again->renewed,
            "taken in twice, it adds again");
    require(standingOf(desk) == once, "taken in twice, it is another state");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static fuzz::MemoryCellars cellars;
    static fuzz::Forger forger(cellars);
    Input input(data, size);
    const Bytes file = forger.forge(input);
    cellar::Cellar& desk = cellars.renewDesk();
    const Path path = "/day.spile";
    require((*cellars.files().create(path))->append(file).has_value(), "no file");
    takeTwice(desk, path);
    return 0;
}
