// One durable record, beside a bare SQLite insert of the same bytes with the same durability.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/ledger/database.hpp"
#include "tests/bench/report.hpp"
#include "tests/support/test_device.hpp"

namespace {

using namespace spile;

constexpr int rounds = 400;

// As many bytes as a draw entry's row has, with a unique id and two more indices.
class BareTable {
public:
    explicit BareTable(const Path& folder)
        : database_(std::move(*ledger::Database::open((folder / "bare.db").string(),
                                                      ledger::Database::Mode::Write)))
    {
        bench::must(database_.run(
            "CREATE TABLE bare(n INTEGER PRIMARY KEY, id BLOB NOT NULL UNIQUE, d INTEGER, "
            "seq INTEGER, subject BLOB, core BLOB) STRICT;"
            "CREATE INDEX bare_chain ON bare(d, seq);"
            "CREATE INDEX bare_subject ON bare(subject);"));
    }
    void insert(SeededRandom& random)
    {
        std::array<std::uint8_t, 32> id{};
        std::array<std::uint8_t, 16> subject{};
        Bytes core(330);
        random.fill(id);
        random.fill(subject);
        random.fill(core);
        auto transaction = ledger::Transaction::begin(database_);
        bench::must(transaction);
        bench::must(
            database_.execute("INSERT INTO bare(id, d, seq, subject, core) VALUES(?, 1, ?, ?, ?)",
                              ByteView(id), ++seq_, ByteView(subject), core));
        bench::must(transaction->commit());
        bench::must(database_.checkpoint(1024));
    }

private:
    ledger::Database database_;
    std::int64_t seq_ = 0;
};

void run()
{
    support::TestDevice device(11);
    const auto cellar = device.newCellar();
    const auto person = cellar::registerPerson(*cellar, "Ada");
    const auto barrel = cellar::registerBarrel(*cellar, {.mark = "Rum 3", .size = litres(200)});
    bench::must(cellar::recordFill(*cellar, {.barrel = barrel->barrel, .volume = litres(190)}));
    const auto sheet = cellar::openSheet(*cellar, barrel->barrel, *person);
    BareTable bare(device.folder.path());
    SeededRandom random(5);

    bench::Times bareTimes, drawTimes, tapTimes;
    for (int i = 0; i < rounds; ++i) {  // in turns, so that a busy disk hurts all alike
        bareTimes.add([&] { bare.insert(random); });
        drawTimes.add([&] {
            bench::must(cellar::recordDraw(
                *cellar,
                {.barrel = barrel->barrel, .volume = millilitres(1), .method = "sample hole"}));
        });
        tapTimes.add([&] { bench::must(cellar::tapScore(*cellar, *sheet, "vanilla", 1 + i % 9)); });
    }
    bench::title("One durable record (" + std::to_string(rounds) + " rounds, in turns)");
    bench::row("bare insert, same durability", bareTimes);
    bench::row("draw recorded: signed, folded, durable", drawTimes, bareTimes, "<= 1.4");
    bench::row("tap on an open sheet kept", tapTimes, bareTimes, "<= 1.4");
}

}  // namespace

int main() { return bench::guarded(run); }
