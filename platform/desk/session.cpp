#include "platform/desk/session.hpp"

#include "core/cellar/verifying.hpp"
#include "core/ledger/ballast.hpp"
#include "platform/desk/clock_doubt.hpp"

#include <iostream>
#include <memory>
#include <nlohmann/json.hpp>

namespace spile::desk {

Session::Session(Path cellarFolder, bool json)
    : folder_(std::move(cellarFolder)), json_(json), keys_(files_, folder_)
{
}

Result<std::unique_ptr<cellar::Cellar>> Session::open()
{
    return cellar::Cellar::open(folder_, outside(), {}, job("bring up"));
}

void Session::answer(const nlohmann::json& json, const std::string& text) const
{
    if (json_) {
        std::cout << json.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) << '\n';
    } else {
        std::cout << text;
    }
}

int Session::refuse(const Error& error) const
{
    remark("spile-desk: " + worded(error));
    if (ledger::ballastHelps(error) && ledger::giveUpBallast(files_, folder_)) {
        remark(
            "spile-desk: there is room for it now, which was kept for this: do it again, and "
            "make more.");
    }
    if (json_) {
        answer({{"error",
                 {{"code", codeName(error.code)},
                  {"subject", error.subject},
                  {"value", error.value},
                  {"remedy", error.limit}}}},
               {});
    }
    return exitOf(error);
}

void Session::doubtClock(cellar::Cellar& cellar) const
{
    const auto doubt = cellar::clockDoubt(cellar.database(), clock_);
    if (!doubt) {
        remark("spile-desk: " + worded(doubt.error()));
        return;
    }
    if (!doubt->any()) {
        return;
    }
    std::string line = "spile-desk:";
    for (const SaidDoubt& said : doubtsSaid(*doubt)) {
        line += " " + said.says;
    }
    remark(line +
           " What is recorded now gets this machine's time: `spile-desk clock` shows all clocks "
           "and sets records right, with --right or --shows.");
}

void Session::lookAfter(cellar::Cellar& cellar)
{
    constexpr int entries = 2000;
    const auto kept = ledger::keepBallast(files_, random_, folder_);
    if (!kept) {
        remark("spile-desk: " + worded(kept.error()));
    }
    const auto round =
        cellar::roundSoFar(cellar.database()).and_then([&](const cellar::Round& before) {
            return cellar::verifyNext(cellar.database(), cellar.ledger().photos(), before, entries,
                                      clock_.now());
        });
    const auto noted = round ? cellar::keepRound(cellar, *round) : Result<void>();
    if (!round || !noted) {
        remark("spile-desk: " + worded(round ? noted.error() : round.error()));
    } else if (!round->wrong().empty()) {
        remark(
            "spile-desk: damaged here: " + round->wrong() +
            ". `check` lists all; a day file with everything from another device brings it back.");
    }
}

void Session::remark(const std::string& text) { std::cerr << text << '\n'; }

Job Session::job(const std::string& what) const
{
    constexpr Milliseconds every(1000);
    auto next = std::make_shared<Milliseconds>(clock_.sinceBoot() + every);
    return {[this, what, next, every](std::uint64_t done, std::uint64_t total) {
                if (clock_.sinceBoot() >= *next) {
                    *next = clock_.sinceBoot() + every;
                    remark(what + ": " + std::to_string(done) + " of " + std::to_string(total));
                }
            },
            nullptr};
}

}  // namespace spile::desk
