// The disk refuses a call of SQLite's: the act says so, nothing that was saved is lost, and after a
// start anew recording goes on.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/recorded_disk.hpp"
#include "tests/support/small_cellar.hpp"

#include <cstdlib>
#include <gtest/gtest.h>

// A connection that failed is left open on purpose: closing it could write.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:libsqlite3"; }

namespace spile::cellar {

using support::Crash;
using support::Leaves;
using support::RecordedDisk;

namespace {

// One cellar on a disk that can refuse, made anew for each refusal.
class RefusedCall {
public:
    RefusedCall()
    {
        {
            auto made = device_.newCellar();
            small_ = support::fillSmallCellar(*made);
        }
        std::filesystem::copy(device_.folder.path(), before_.path(),
                              std::filesystem::copy_options::recursive);
        disk_ = std::make_unique<RecordedDisk>(device_.folder.path(), device_.files);
        auto opened = Cellar::open(device_.cellarFolder(), outside(), disk_->vfs());
        EXPECT_TRUE(opened) << support::textOf(opened.error());
        cellar_ = std::move(*opened);
    }

    [[nodiscard]] RecordedDisk& disk() { return *disk_; }

    // Draws until the disk refuses, moving the log into the database now and then; returns the
    // first error.
    std::optional<Error> drawUntilRefused(int most)
    {
        for (int i = 0; i < most; ++i) {
            const auto drawn = draw(*cellar_);
            if (!drawn) {
                return drawn.error();
            }
            saved_.push_back(*drawn);
            if (i % 3 == 2) {
                if (const auto moved = cellar_->database().checkpoint(0); !moved) {
                    return moved.error();
                }
            }
        }
        return std::nullopt;
    }

    // The program is ended as the rule for broken connections wants it, and started again after the
    // power was lost too. Returns what is wrong then.
    std::string wrongAfterStart(Leaves leaves)
    {
        const auto refusedNow = draw(*cellar_);
        if (disk_->refused() && refusedNow) {
            return "it goes on with a connection that failed";
        }
        const std::size_t calls = disk_->calls().size();
        cellar_.reset();
        support::TempFolder after;
        writeCrashed(disk_->calls(), Crash{calls, leaves, calls, false}, before_.path(),
                     after.path());
        auto cellar = Cellar::open(after.path() / "test.cellar", plain());
        if (!cellar) {
            return "it does not open: " + support::textOf(cellar.error());
        }
        for (const EntryId& id : saved_) {
            const auto here =
                (*cellar)->database().integer(0, "SELECT 1 FROM entry WHERE id = ?", id);
            if (here != Result<std::int64_t>(1)) {
                return "a record that was saved is lost";
            }
        }
        if (std::string problems = support::problemsOf(**cellar); !problems.empty()) {
            return problems;
        }
        return draw(**cellar) ? "" : "it does not go on";
    }

private:
    [[nodiscard]] Outside plain()
    {
        return {device_.clock, device_.files, device_.random, device_.ids, device_.keys};
    }
    [[nodiscard]] Outside outside()
    {
        return {device_.clock, disk_->files(), device_.random, device_.ids, device_.keys};
    }
    Result<EntryId> draw(Cellar& cellar)
    {
        return recordDraw(
            cellar, {.barrel = small_.barrel, .volume = millilitres(5), .method = "sample hole"});
    }

    support::TestDevice device_{211};
    support::SmallCellar small_;
    support::TempFolder before_;
    std::unique_ptr<RecordedDisk> disk_;
    std::unique_ptr<Cellar> cellar_;
    std::vector<EntryId> saved_;
};

struct Refusals {
    RecordedDisk::Refuse what;
    bool lasting = false;
    bool full = false;
    ErrorCode code = ErrorCode::Storage;
};

// Every call of the kind is refused once, each in a cellar of its own; of writes, which are many,
// every fifth, or with SPILE_CRASHES all.
void refuseEach(const Refusals& refusals)
{
    constexpr int draws = 7;
    const bool every =
        refusals.what == RecordedDisk::Refuse::Sync || std::getenv("SPILE_CRASHES") != nullptr;
    int refused = 0;
    for (std::size_t at = 0;; at += every ? 1 : 5) {
        RefusedCall cellar;
        cellar.disk().refuse(refusals.what, at, refusals.lasting, refusals.full);
        const auto error = cellar.drawUntilRefused(draws);
        if (!cellar.disk().refused()) {
            break;
        }
        ++refused;
        SCOPED_TRACE("call " + std::to_string(at));
        ASSERT_TRUE(error) << "nobody was told";
        EXPECT_EQ(error->code, refusals.code) << support::textOf(*error);
        const Leaves leaves = support::allLeaves[at % support::allLeaves.size()];
        ASSERT_EQ(cellar.wrongAfterStart(leaves), "");
    }
    EXPECT_GE(refused, draws);
}

}  // namespace

TEST(Fault06_SyncFails, OnceAndIsTold) { refuseEach({RecordedDisk::Refuse::Sync}); }

TEST(Fault06_SyncFails, FromThenOnAndIsTold) { refuseEach({RecordedDisk::Refuse::Sync, true}); }

TEST(Fault08_DiskFull, IsToldAtOnceAndLosesNothing)
{
    refuseEach({RecordedDisk::Refuse::Write, true, true, ErrorCode::StorageFull});
}

TEST(Fault10_StorageThatVanishes, IsToldAndLosesNothing)
{
    refuseEach({RecordedDisk::Refuse::Write, true});
}

TEST(Fault10_StorageThatVanishes, ForOneCallOnly) { refuseEach({RecordedDisk::Refuse::Write}); }

}  // namespace spile::cellar
