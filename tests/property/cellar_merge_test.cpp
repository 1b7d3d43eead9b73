// Whatever several devices record, correct and exchange, and in whatever order: in the end all
// have the same records, byte for byte, and the same state.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/queries.hpp"
#include "core/cellar/settling.hpp"
#include "tests/support/fleet.hpp"

#include <array>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <set>

namespace spile::cellar {

using support::Fleet;

namespace {

enum class What : std::uint8_t {
    Register,
    RegisterFull,
    Fill,
    Empty,
    Draw,
    Taste,
    Gauge,
    Verdict,
    Move,
    Amend,
    Void,
    SetClock,
    PassTime,
    Exchange,
    ReplayOldFile,
    Admit,
    AdmitAsDesk,
    CutOff,
    Adopt,
    Reinstate,
    BackUp,
    Restore
};
constexpr std::array names = {
    "register",   "register full", "fill",  "empty",     "draw",    "taste",    "gauge",  "verdict",
    "move",       "amend",         "void",  "set clock", "pass",    "exchange", "replay", "admit",
    "admit desk", "cut off",       "adopt", "reinstate", "back up", "restore"};

// One thing that one device does; `a` and `b` choose among what there is to choose from.
struct Step {
    What what;
    unsigned device, a, b;
};

std::ostream& operator<<(std::ostream& out, const Step& step)
{
    return out << names.at(static_cast<std::size_t>(step.what)) << " on " << step.device << " ("
               << step.a << ", " << step.b << ")";
}

rc::Gen<std::vector<Step>> steps(const rc::Gen<What>& what)
{
    const auto number = rc::gen::inRange(0U, 24U);
    return rc::gen::container<std::vector<Step>>(
        rc::gen::map(rc::gen::tuple(what, number, number, number), [](const auto& drawn) {
            const auto& [which, device, a, b] = drawn;
            return Step{which, device, a, b};
        }));
}

// Each thing once, and more of what makes branches: exchanges between a backup and its return.
rc::Gen<What> anything()
{
    return rc::gen::map(rc::gen::inRange(0, static_cast<int>(names.size()) + 9), [](int i) {
        constexpr std::array more = {What::Draw,     What::Draw,     What::Amend,
                                     What::Exchange, What::Exchange, What::Exchange,
                                     What::BackUp,   What::Restore,  What::Restore};
        const auto which = static_cast<std::size_t>(i);
        return which < names.size() ? static_cast<What>(i) : more.at(which - names.size());
    });
}

rc::Gen<What> corrections()
{
    return rc::gen::weightedElement<What>(
        {{6, What::Amend}, {3, What::Void}, {2, What::Exchange}, {1, What::SetClock}});
}

// Carries a history out on a fleet. Acts may be refused, by the rules; nothing may break.
class Story {
public:
    explicit Story(std::size_t devices) : fleet(devices)
    {
        // Clocks that all stand at one time make ties, the hardest case for a merge.
        for (std::size_t i = 0; i < devices; ++i) {
            fleet.at(i).clock.setWall(start);
        }
    }

    Fleet fleet;
    std::set<EntryId> recorded;  // by a device that was never set back

    void play(const std::vector<Step>& steps)
    {
        for (const Step& step : steps) {
            play(step);
        }
    }

    void finish()
    {
        // More than once: a record that waited for its device's admission at one device alone,
        // since its own was set back, is passed on only after it counts there.
        fleet.exchangeUntilQuiet();
        if (restored_) {  // what two restored devices have lost may be in an old file alone
            for (const Path& file : files_) {
                fleet.takeIn(0, file);
            }
            fleet.exchangeUntilQuiet();
        }
        admitWhatWaits();
        const Sha256 root = *stateRoot(fleet.cellar(0));
        const Sha256 records = support::recordBytes(fleet.cellar(0));
        for (std::size_t i = 0; i < fleet.size(); ++i) {
            RC_ASSERT(support::problemsOf(fleet.cellar(i)) == "");  // its state made anew is equal
            RC_ASSERT(check(fleet.cellar(i), {})->waiting == 0U);
            RC_ASSERT(support::recordBytes(fleet.cellar(i)) == records);
            RC_ASSERT(*stateRoot(fleet.cellar(i)) == root);
            RC_ASSERT(setAside(fleet.cellar(i)) == setAside(fleet.cellar(0)));
        }
        for (const EntryId& id : recorded) {
            RC_ASSERT(*fleet.cellar(0).database().integer(0, "SELECT 1 FROM entry WHERE id = ?",
                                                          id) == 1);
        }
        for (const Path& file : files_) {
            RC_ASSERT(fleet.takeIn(0, file).added == 0U);
        }
        RC_ASSERT(*stateRoot(fleet.cellar(0)) == root);
    }

private:
    // A device that got a new key before anybody had admitted its old one: what that one recorded
    // waits for a person (To settle).
    void admitWhatWaits()
    {
        const auto rows = *toSettle(fleet.cellar(0).database(), 20);
        for (const UnsettledRow& row : rows) {
            if (row.what == Unsettled::Waiting) {
                std::ignore = admit(fleet.cellar(0), joinCode(row.device), "Old phone",
                                    ledger::DeviceRole::Phone);
            }
        }
        fleet.exchangeUntilQuiet();
    }

    static std::vector<EntryId> setAside(Cellar& cellar)
    {
        std::vector<EntryId> ids;
        RC_ASSERT(cellar.database()
                      .each(
                          [&](const ledger::Row& row) {
                              ids.push_back(row.id<EntryId>(0));
                              return Result<void>();
                          },
                          "SELECT id FROM entry JOIN set_aside USING(n) ORDER BY id")
                      .has_value());
        return ids;
    }

    static constexpr Instant start = instantFromMs(1756713600000);

    void play(const Step& step)
    {
        Cellar& cellar = fleet.cellar(step.device);
        SimulatedClock& clock = fleet.at(step.device).clock;
        switch (step.what) {
            case What::SetClock:
                clock.setWall(start + std::chrono::days(365) * (static_cast<int>(step.a % 5) - 2));
                break;
            case What::PassTime:
                clock.pass(std::chrono::hours(1 + step.a));
                break;
            case What::Exchange:
                exchange(step);
                break;
            case What::ReplayOldFile:
                if (!files_.empty()) {
                    fleet.takeIn(step.device, files_[step.a % files_.size()]);
                }
                break;
            case What::Admit:
            case What::AdmitAsDesk:
                keep(admit(cellar, joinCode(fleet.cellar(step.a).ledger().device()), "Phone",
                           step.what == What::Admit ? ledger::DeviceRole::Phone
                                                    : ledger::DeviceRole::Desk)
                         .map([](const ledger::Admitted& done) { return done.entry; }));
                break;
            case What::CutOff:
                keep(cutOff(cellar, {.device = fleet.cellar(step.a).ledger().device(),
                                     .lastSeq = step.b % 3 == 0 ? std::optional<std::uint64_t>(1)
                                                                : std::nullopt}));
                break;
            case What::Adopt:
                adoptSomething(cellar, step);
                break;
            case What::Reinstate:
                std::ignore =
                    reinstate(cellar, ledger::SigningKey(**fleet.at(0).keys.load(KeyName::Owner)),
                              fleet.cellar(step.a).ledger().device());
                break;
            case What::BackUp:
                fleet.backUp(step.device);
                break;
            case What::Restore:
                if (fleet.restore(step.device)) {
                    restored_ = true;
                    recorded.clear();  // some of them may be gone, as they should be
                }
                break;
            default:
                record(cellar, step);
                break;
        }
    }

    void exchange(const Step& step)
    {
        const bool forOne = step.b % 2 == 0;
        const std::size_t to = step.a % fleet.size();
        files_.push_back(fleet.handOut(step.device, forOne ? std::optional(to) : std::nullopt));
        fleet.takeIn(to, files_.back());
        if (step.b % 3 == 0) {
            RC_ASSERT(fleet.takeIn(to, files_.back()).added == 0U);
        }
    }

    void record(Cellar& cellar, const Step& step)
    {
        const SubjectId barrel = someBarrel(cellar, step.a);
        const int small = static_cast<int>(1 + step.b % 9);
        Circumstance when{.person = fleet.small().person};
        if (step.b % 4 == 1) {  // back-dated, and sometimes from the future
            when.at = ledger::EventTime{start + std::chrono::days(static_cast<int>(step.b) - 12)};
        }
        switch (step.what) {
            case What::Register:
            case What::RegisterFull: {
                NewBarrel made{.mark = "Rum", .fillsBefore = small};
                if (step.what == What::RegisterFull) {
                    made.fullSince = FullSince{{start - std::chrono::days(30)}};
                }
                RC_ASSERT(registerBarrel(cellar, made).has_value());
                break;
            }
            case What::Fill:
                keep(recordFill(cellar, {.barrel = barrel,
                                         .batch = fleet.small().batch,
                                         .volume = litres(100 + small),
                                         .circumstance = when}));
                break;
            case What::Empty:
                keep(recordEmpty(cellar, {.barrel = barrel, .circumstance = when}));
                break;
            case What::Draw:
                keep(recordDraw(cellar, {.barrel = barrel,
                                         .volume = millilitres(small),
                                         .method = "valve",
                                         .circumstance = when}));
                break;
            case What::Taste:
                keep(recordTaste(cellar, {.barrel = barrel,
                                          .scores = {{"oak", small}, {"rum", std::nullopt}},
                                          .circumstance = when}));
                break;
            case What::Gauge:
                keep(recordGauge(cellar, {.barrel = barrel,
                                          .volume = litres(small * 10),
                                          .method = "dip",
                                          .circumstance = when}));
                break;
            case What::Verdict:
                keep(recordVerdict(cellar, {.barrel = barrel,
                                            .verdict = step.b % 2 == 0 ? "hold" : "ready",
                                            .circumstance = when}));
                break;
            case What::Move:
                move(cellar, barrel, when);
                break;
            case What::Amend:
                amendSomething(cellar, step);
                break;
            default:
                keep(voidEntry(cellar, someEntry(cellar, step.a)));
                break;
        }
    }

    void move(Cellar& cellar, const SubjectId& barrel, const Circumstance& when)
    {
        const auto place = registerPlace(cellar, "Rack");
        RC_ASSERT(place.has_value());
        keep(recordMove(cellar, barrel, *place, when));
    }

    void amendSomething(Cellar& cellar, const Step& step)
    {
        const auto value = static_cast<std::int64_t>(step.b);
        ledger::Fields fields;
        if (step.b % 3 != 0) {
            fields[static_cast<std::uint32_t>(Field::VolumeMl)] = 1000 + value;
        }
        if (step.b % 2 == 0) {
            fields[static_cast<std::uint32_t>(Field::Note)] =
                value == 4 ? ledger::Value() : ledger::Value("note " + std::to_string(value));
        }
        keep(amend(cellar, someEntry(cellar, step.a), fields));
    }

    void adoptSomething(Cellar& cellar, const Step& step)
    {
        const auto rows = *toSettle(cellar.database(), 20);
        for (const UnsettledRow& row : rows) {
            const auto choices = *choicesFor(cellar.database(), row);
            if (row.what == Unsettled::SetAside && !choices.empty()) {
                std::ignore = adopt(cellar, {choices[step.a % choices.size()].entry});
            }
        }
    }

    // Refusals must be clean; what succeeded must be there in the end.
    void keep(const Result<EntryId>& done)
    {
        if (done) {
            recorded.insert(*done);
        } else {
            RC_ASSERT((done.error().code == ErrorCode::Conflict ||
                       done.error().code == ErrorCode::NotFound ||
                       done.error().code == ErrorCode::Malformed ||
                       done.error().code == ErrorCode::OutOfRange));
        }
    }

    SubjectId someBarrel(Cellar& cellar, unsigned which)
    {
        const auto rows = barrels(cellar.database(), {}, 100);
        RC_ASSERT(rows.has_value());
        return rows->empty() ? SubjectId() : (*rows)[which % rows->size()].barrel;
    }

    // Of any kind: also corrections, people, devices.
    EntryId someEntry(Cellar& cellar, unsigned which)
    {
        std::vector<EntryId> ids;
        RC_ASSERT(cellar.database()
                      .each(
                          [&](const ledger::Row& row) {
                              ids.push_back(row.id<EntryId>(0));
                              return Result<void>();
                          },
                          "SELECT id FROM entry ORDER BY n DESC LIMIT 12")
                      .has_value());
        return ids[which % ids.size()];
    }

    std::vector<Path> files_;
    bool restored_ = false;
};

}  // namespace

RC_GTEST_PROP(Merge, GivesAllDevicesTheSameRecordsAndTheSameState, ())
{
    const auto devices = *rc::gen::inRange<std::size_t>(2, 5);
    const auto history = *steps(anything());
    Story story(devices);
    story.play(history);
    story.finish();
}

RC_GTEST_PROP(Merge, SettlesConcurrentCorrectionsOfAFewRecordsAlike, ())
{
    const auto history = *rc::gen::resize(40, steps(corrections()));
    Story story(3);
    story.fleet.exchangeAll();
    story.play(history);
    story.finish();
}

}  // namespace spile::cellar
