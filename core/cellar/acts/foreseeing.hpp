#pragma once

#include "core/cellar/cellar.hpp"
#include "core/cellar/queries.hpp"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

/// What the outlooks of the barrels come to, kept on this device so that the due list and the
/// calendar are read by an index. An estimate at a time and no record: it is not handed out, and
/// what the state says does not follow from it. core/outlook computes it.
namespace spile::cellar {

/// Why the next tasting is when it is.
namespace tastingReason {
inline constexpr const char* decides = "decides";
inline constexpr const char* beforeTooFar = "before too far";
inline constexpr const char* looksAgain = "looks again";
inline constexpr const char* habit = "habit";  // the due list goes by its own, then
inline constexpr const char* atOnce = "at once";
}  // namespace tastingReason

/// What the chances advise.
namespace advice {
inline constexpr const char* wait = "wait";
inline constexpr const char* pull = "pull";
inline constexpr const char* tooFar = "too far";
inline constexpr const char* noWindows = "no windows";
}  // namespace advice

struct KeptOutlook {
    SubjectId barrel;
    /// Of the facts that it was computed from: outlookFingerprints(). It counts as long as it is
    /// the barrel's own still.
    std::string fingerprint;
    Instant nextTasting;
    std::string reason = tastingReason::habit;
    std::string advice = advice::noWindows;
    /// When all windowed attributes are inside together; none without windows.
    struct Best {
        double chanceNow = 0, chance = 0;
        Instant from, at, to;

        friend bool operator==(const Best&, const Best&) = default;
    };
    std::optional<Best> best = {};
    Instant horizon;
    Instant made;

    friend bool operator==(const KeptOutlook&, const KeptOutlook&) = default;
};

/// The fingerprints of all filled barrels: the fill, how often it was tasted and when last. To be
/// read before the outlooks are computed, so that what comes meanwhile tells.
[[nodiscard]] Result<std::map<SubjectId, std::string>> outlookFingerprints(
    ledger::Database& database);
/// A number that goes up with every record that counts: whether there is anything new.
[[nodiscard]] Result<std::int64_t> newestRecord(ledger::Database& database);

/// Keep these outlooks, each in the place of the barrel's earlier one, and say anew when the
/// barrels are due. One transaction: give some hundreds at a time.
///
/// Errors    OutOfRange for a chance outside 0 to 1; those of ledger::Database.
[[nodiscard]] Result<void> keepOutlooks(Cellar& cellar, const std::vector<KeptOutlook>& outlooks);
/// Forget the outlooks that were made before `made`: of barrels that are empty by now.
[[nodiscard]] Result<void> forgetOutlooks(Cellar& cellar, Instant made);

/// The outlook of a barrel; none if none is kept, or it was tasted or filled since.
[[nodiscard]] Result<std::optional<KeptOutlook>> keptOutlook(ledger::Database& database,
                                                             const SubjectId& barrel);

/// A barrel in the calendar of the cellar.
struct ForeseenBarrel {
    KeptOutlook outlook;
    std::string code, mark, beer;
};
/// Where a page of the calendar begins: after this one.
struct AfterForeseen {
    std::optional<Instant> best = Instant::min();  // none: a barrel without windows
    SubjectId barrel;
};
[[nodiscard]] AfterForeseen afterForeseen(const ForeseenBarrel& row);
/// The filled barrels with an outlook, by when they are best, those without windows last. Also with
/// an outlook from before the last tasting: a newer one follows soon.
[[nodiscard]] Result<std::vector<ForeseenBarrel>> foreseenBarrels(ledger::Database& database,
                                                                  const AfterForeseen& after,
                                                                  int limit);

}  // namespace spile::cellar
