// Taking in 100,000 entries, beside verifying their signatures alone and beside a bare bulk insert
// of all rows that it writes. All times are by the clock on the wall; signatures alone are verified
// on one core, as anybody would who verifies one after the other.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/checking.hpp"
#include "core/ledger/bundle_reader.hpp"
#include "core/ledger/fields.hpp"
#include "tests/bench/bare_rows.hpp"
#include "tests/bench/report.hpp"
#include "tests/support/test_device.hpp"

namespace {

using namespace spile;

constexpr int entries = 100'000;
constexpr int barrels = 500;

ledger::NewEntry gauge(const SubjectId& barrel, int i)
{
    ledger::NewEntry entry;
    entry.kind = "gauge";
    entry.subject = barrel;
    entry.fields = {
        {static_cast<std::uint32_t>(cellar::Field::VolumeMl), std::int64_t{190'000 - i % 5000}},
        {static_cast<std::uint32_t>(cellar::Field::GaugeMethod), std::string("dip")}};
    return entry;
}

// A desk with 100,000 gauges of 500 barrels, recorded a thousand to a transaction.
Path makeDayFile(support::TestDevice& device, cellar::Cellar& desk)
{
    std::vector<SubjectId> all;
    for (int i = 0; i < barrels; ++i) {
        const auto barrel = cellar::registerBarrel(desk, {.mark = "Rum", .size = litres(200)});
        bench::must(barrel);
        bench::must(cellar::recordFill(desk, {.barrel = barrel->barrel, .volume = litres(195)}));
        all.push_back(barrel->barrel);
    }
    constexpr int atOnce = 1000;
    for (int done = 0; done < entries;) {
        auto change = desk.ledger().change();
        bench::must(change);
        for (int i = 0; i < atOnce; ++i, ++done) {
            device.clock.pass(Milliseconds(1));
            bench::must(
                change->record(gauge(all.at(static_cast<std::size_t>(done % barrels)), done)));
        }
        bench::must(change->commit());
    }
    const Path file = device.folder.path() / "big.spile";
    bench::must(cellar::handOut(desk, file, {}));
    return file;
}

std::vector<ledger::VerifiedEntry> readAll(support::TestDevice& device, const Path& file)
{
    std::vector<ledger::VerifiedEntry> all;
    auto bundle = ledger::BundleReader::open(device.files, file);
    bench::must(bundle);
    bench::must(bundle->eachEntry([&](ledger::VerifiedEntry&& entry) {
        all.push_back(std::move(entry));
        return Result<void>();
    }));
    return all;
}

void bareInsert(const Path& file, const std::vector<ledger::VerifiedEntry>& all)
{
    auto database = ledger::Database::open(file.string(), ledger::Database::Mode::Write);
    bench::must(database);
    bench::must(database->run(
        "CREATE TABLE bare(n INTEGER PRIMARY KEY, id BLOB NOT NULL UNIQUE, d INTEGER, seq INTEGER, "
        "subject BLOB, core BLOB, body BLOB, signature BLOB) STRICT;"
        "CREATE INDEX bare_chain ON bare(d, seq);"
        "CREATE INDEX bare_subject ON bare(subject);"));
    auto transaction = ledger::Transaction::begin(*database);
    bench::must(transaction);
    for (const ledger::VerifiedEntry& entry : all) {
        bench::must(database->execute(
            "INSERT INTO bare(id, d, seq, subject, core, body, signature) "
            "VALUES(?, 1, ?, ?, ?, ?, ?)",
            entry.id, static_cast<std::int64_t>(entry.core.seq), entry.core.subject,
            entry.entry.core, entry.entry.body, entry.entry.signature));
    }
    bench::must(transaction->commit());
    bench::must(database->checkpoint(0));
}

void verifyAll(const ledger::PublicKey& key, const std::vector<ledger::VerifiedEntry>& all)
{
    for (const ledger::VerifiedEntry& entry : all) {
        if (entry.core.kind == "gauge" &&
            !ledger::verify(key, ledger::signedMessage(entry.core.cellar, entry.id),
                            entry.entry.signature)) {
            throw std::runtime_error("a signature does not hold");
        }
    }
}

// An empty replica of the cellar, to take the file in.
struct Replica {
    explicit Replica(const Path& file)
    {
        auto bundle = ledger::BundleReader::open(phone.files, file);
        bench::must(bundle);
        auto made = ledger::Ledger::createReplica(phone.cellarFolder(), phone.outside(), state,
                                                  bundle->header().cellar);
        bench::must(made);
        ledger = std::move(*made);
    }
    bench::Times takeIn(const Path& file, ledger::SignatureCheck check)
    {
        bench::Times times;
        times.add([&] { bench::must(ledger::takeIn(*ledger, file, check, {})); });
        return times;
    }

    support::TestDevice phone{23};
    cellar::State state;
    std::unique_ptr<ledger::Ledger> ledger;
};

void run()
{
    support::TestDevice device(21);
    const auto desk = device.newCellar();
    bench::Times record;
    Path file;
    record.add([&] { file = makeDayFile(device, *desk); });

    bench::Times bare, verify, full, again, rebuild;
    {
        const auto all = readAll(device, file);
        bare.add([&] { bareInsert(device.folder.path() / "bare.db", all); });
        verify.add([&] { verifyAll(desk->ledger().key().publicKey(), all); });
    }
    {
        Replica replica(file);
        full = replica.takeIn(file, ledger::SignatureCheck::EveryEntry);
        again = replica.takeIn(file, ledger::SignatureCheck::EveryEntry);
    }
    Replica replica(file);
    const bench::Times fast = replica.takeIn(file, ledger::SignatureCheck::RangeEnds);
    const bench::Times allRows = bench::BareRows(replica.phone.cellarFolder() / "ledger.db")
                                     .insertInto(device.folder.path() / "all.db");
    rebuild.add([&] { bench::must(cellar::check(*desk, {})); });

    bench::title("A day file of " + std::to_string(entries + 2 * barrels + 2) + " entries");
    bench::row("record them and hand them out", record);
    bench::row("verify the signatures alone, one core", verify);
    bench::row("take in, every signature", full, verify, "<= 1.4 of verifying");
    bench::processorRow(full, verify);
    bench::row("bare bulk insert of the entries' rows alone", bare);
    bench::row("bare bulk insert of all rows", allRows);
    bench::row("take in, chains and heads", fast, allRows, "<= 2.5 of inserting all rows");
    bench::processorRow(fast, allRows);
    bench::row("take the same in again", again, full, "<= 0.1 of the first");
    bench::row("check all of it, state rebuilt", rebuild);
}

}  // namespace

int main() { return bench::guarded(run); }
