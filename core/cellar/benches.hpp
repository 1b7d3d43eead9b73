#pragma once

#include "core/cellar/queries.hpp"

/// Benches: trial glasses mixed beside one another, how they were scored, and which was accepted.
///
/// Errors    of every query: those of ledger::Database.
namespace spile::cellar {

/// A bench as it stands in a list.
struct BenchRow {
    SubjectId bench;
    EntryId entry;
    std::string name;  // may be empty
    Instant at;
    Instant counted;  // `at`, but never later than it was recorded
    int glasses = 0;
    bool accepted = false;
    std::optional<SubjectId> target;
};
/// Where a page of benches begins: before the bench with these keys.
struct BeforeBench {
    Instant counted = Instant::max();
    SubjectId bench;
};
/// All benches, the newest first.
[[nodiscard]] Result<std::vector<BenchRow>> benches(ledger::Database& database,
                                                    const BeforeBench& before, int limit);

/// What a glass has of one barrel, as the amount for the tank.
struct BenchPortion {
    SubjectId barrel;
    Volume volume;
    std::string name;  // the barrel's mark or code
    std::string code;
};
struct GlassTaste {
    EntryId taste;
    SubjectId person;
    std::string name;  // of the person
    Instant at;
    std::map<std::string, std::optional<std::int64_t>> scores;  // none: not judged
    std::optional<std::int64_t> liking;
};
struct BenchGlass {
    int number = 0;
    std::vector<BenchPortion> portions;
    std::vector<GlassTaste> tastes;  // the oldest first

    [[nodiscard]] bool isTastedBy(const SubjectId& person) const;
    [[nodiscard]] Volume volume() const;
};
struct AcceptedGlass {
    EntryId entry;
    int glass = 0;
    Instant at;
    std::optional<SubjectId> lot;  // that was made of it
};

struct BenchWhole : BenchRow {
    std::vector<BenchGlass> poured;  // by their numbers
    std::optional<AcceptedGlass> choice;

    [[nodiscard]] const BenchGlass* glassOf(int number) const;
    [[nodiscard]] int tastedBy(const SubjectId& person) const;  // how many glasses
    /// Whether this person may see contents and scores: once they have scored every glass.
    [[nodiscard]] bool areScoresShownTo(const SubjectId& person) const;
    /// The attributes that somebody scored, each once, in the order of the alphabet.
    [[nodiscard]] std::vector<std::string> scoredAttributes() const;
};
/// None if the records do not have it.
[[nodiscard]] Result<std::optional<BenchWhole>> benchById(ledger::Database& database,
                                                          const SubjectId& bench);

/// Return the numbers of the glasses in the order in which this person gets them: the first is
/// their glass A. Shuffled by a hash of bench and person: the same for ever, another for others.
[[nodiscard]] std::vector<int> glassOrder(const SubjectId& bench, const SubjectId& person,
                                          int glasses);

}  // namespace spile::cellar
