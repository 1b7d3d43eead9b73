#include "core/cellar/settling.hpp"

#include "core/cellar/effective.hpp"
#include "core/cellar/former_name.hpp"
#include "core/cellar/kind.hpp"
#include "core/cellar/set_aside.hpp"
#include "core/cellar/settle_query_text.hpp"
#include "core/cellar/true_time.hpp"
#include "core/cellar/volume_doubts.hpp"

#include <algorithm>
#include <array>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr std::size_t keyDigits = 8;

std::string keyOf(Unsettled what, const std::string& hex)
{
    // Ids of barrels begin with their time: the end tells them apart.
    const bool barrel = what >= Unsettled::SameCode && what <= Unsettled::Overdrawn;
    return barrel ? hex.substr(hex.size() - keyDigits) : hex.substr(0, keyDigits);
}

Result<std::string> textOrNone(Database& database, std::string_view sql, ByteView id)
{
    SPILE_ASSIGN(found, database.first([](const Row& row) { return row.textIfAny(0); }, sql, id));
    return found ? found->value_or("") : std::string();
}

Result<std::string> nameOfSubject(Database& database, const SubjectId& subject)
{
    SPILE_ASSIGN(barrel, textOrNone(database, query_text::barrelName, subject.bytes()));
    return barrel.empty() ? textOrNone(database, query_text::lotName, subject.bytes())
                          : Result<std::string>(barrel);
}

class Listing {
public:
    Listing(Database& database, int limit) : database_(database), limit_(limit) {}

    Result<std::vector<UnsettledRow>> run()
    {
        for (const Unsettled what : {Unsettled::TwoValues, Unsettled::VoidedAndCorrected}) {
            SPILE_TRY(records(what));
        }
        for (const Unsettled what :
             {Unsettled::SameCode, Unsettled::FilledTwice, Unsettled::GaugedTwice,
              Unsettled::Overfull, Unsettled::Overdrawn}) {
            SPILE_TRY(barrels(what));
        }
        SPILE_TRY(copied());
        SPILE_TRY(setAside());
        SPILE_TRY(waiting());
        SPILE_TRY(newer());
        return std::move(rows_);
    }

private:
    Result<void> records(Unsettled what)
    {
        return named(what, query_text::unsettledRecords, [](const Row& row, UnsettledRow& made) {
            made.entry = row.id<EntryId>(1);
            made.key = keyOf(made.what, made.entry.hex());
            made.kind = row.text(2);
            made.subject = row.id<SubjectId>(3);
            made.device = row.id<DeviceId>(4);
            made.count = 1;
        });
    }

    Result<void> barrels(Unsettled what)
    {
        return named(what, query_text::unsettledBarrels, [](const Row& row, UnsettledRow& made) {
            made.subject = row.id<SubjectId>(1);
            made.key = keyOf(made.what, made.subject.hex());
        });
    }

    // Names are looked up once the rows are read.
    template <class Read>
    Result<void> named(Unsettled what, std::string_view sql, Read read)
    {
        const std::size_t first = rows_.size();
        SPILE_TRY(database_.each(
            [&](const Row& row) {
                UnsettledRow made;
                made.what = what;
                read(row, made);
                rows_.push_back(std::move(made));
                return Result<void>();
            },
            sql, static_cast<std::int64_t>(what), static_cast<std::int64_t>(what), limit_));
        for (std::size_t i = first; i < rows_.size(); ++i) {
            if (!rows_[i].entry.isZero()) {
                SPILE_ASSIGN(times, countedTimes(database_, rows_[i].entry));
                rows_[i].at = times.at;
            }
            SPILE_TRY(nameRow(rows_[i]));
        }
        return {};
    }

    Result<void> nameRow(UnsettledRow& row)
    {
        SPILE_ASSIGN(about, nameOfSubject(database_, row.subject));
        SPILE_ASSIGN(device, nameOfDevice(database_, row.device));
        row.about = about;
        row.deviceName = device;
        return {};
    }

    Result<void> addDevice(Unsettled what, const DeviceId& device, std::uint64_t count)
    {
        UnsettledRow made;
        made.what = what;
        made.device = device;
        made.key = keyOf(what, device.hex());
        made.count = count;
        SPILE_ASSIGN(name, nameOfDevice(database_, device));
        made.deviceName = name;
        made.about = name.empty() ? made.key : name;
        rows_.push_back(std::move(made));
        return {};
    }

    struct Counted {
        DeviceId device;
        std::uint64_t count = 0;
    };
    Result<std::vector<Counted>> devicesOf(std::string_view sql)
    {
        std::vector<Counted> all;
        SPILE_TRY(database_.each(
            [&](const Row& row) {
                all.push_back({row.id<DeviceId>(0), static_cast<std::uint64_t>(row.integer(1))});
                return Result<void>();
            },
            sql, limit_));
        return all;
    }

    // Settled once the old key is cut off.
    Result<void> copied()
    {
        SPILE_ASSIGN(devices, devicesOf(query_text::copiedDevices));
        for (const Counted& found : devices) {
            SPILE_ASSIGN(cutOff, database_.integer(0, query_text::isCutOff, found.device));
            SPILE_ASSIGN(owner, database_.integer(0, query_text::isOwner, found.device));
            if (cutOff == 0 && owner == 0) {  // two desks may have acted for the owner
                SPILE_TRY(addDevice(Unsettled::Copied, found.device, found.count));
            }
        }
        return {};
    }

    Result<void> setAside()
    {
        SPILE_ASSIGN(devices, devicesOf(query_text::limitedDevices));
        for (const Counted& found : devices) {
            if (found.count > 0) {
                SPILE_TRY(addDevice(Unsettled::SetAside, found.device, found.count));
            }
        }
        return {};
    }

    Result<void> waiting()
    {
        DeviceId after;
        for (int i = 0; i < limit_; ++i) {
            SPILE_ASSIGN(next,
                         database_.first([](const Row& row) { return row.idIfAny<DeviceId>(0); },
                                         query_text::nextWaitingDevice, after));
            if (!next || !*next) {
                return {};
            }
            after = **next;
            SPILE_ASSIGN(trusted, database_.integer(0, query_text::isTrusted, after));
            if (trusted == 0) {  // else only the record before is missing, which comes by itself
                SPILE_ASSIGN(count, database_.integer(0, query_text::waitingOfDevice, after));
                SPILE_TRY(addDevice(Unsettled::Waiting, after, static_cast<std::uint64_t>(count)));
                SPILE_ASSIGN(former, formerNameOf(database_, after));
                rows_.back().formerName = former;
            }
        }
        return {};
    }

    Result<void> newer()
    {
        SPILE_ASSIGN(count, database_.integer(0, query_text::newerRecords));
        if (count > 0) {
            UnsettledRow made;
            made.what = Unsettled::Newer;
            made.key = "newer";
            made.count = static_cast<std::uint64_t>(count);
            rows_.push_back(std::move(made));
        }
        return {};
    }

    Database& database_;
    int limit_;
    std::vector<UnsettledRow> rows_;
};

// What can be done about one row.
class Choosing {
public:
    Choosing(Database& database, const UnsettledRow& row) : database_(database), row_(row) {}

    Result<std::vector<Choice>> run()
    {
        SPILE_TRY(collect());
        for (Choice& choice : choices_) {
            choice.kind = choice.kind.empty() ? row_.kind : choice.kind;
        }
        return std::move(choices_);
    }

private:
    Result<void> collect()
    {
        switch (row_.what) {
            case Unsettled::TwoValues:
                return rivals();
            case Unsettled::VoidedAndCorrected:
                return voids();
            case Unsettled::SameCode:
                add(Settling::NewCode);
                return {};
            case Unsettled::FilledTwice:
                return fills();
            case Unsettled::GaugedTwice:
                return gauges();
            case Unsettled::Overfull:
                return takeBacks(largestVolumes(database_, row_.subject));
            case Unsettled::Overdrawn:
                return takeBacks(largestDraws(database_, row_.subject));
            case Unsettled::Copied:
                add(Settling::CutOff);
                return {};
            case Unsettled::SetAside:
                return recordsSetAside();
            case Unsettled::Waiting:
                add(Settling::Admit);
                return {};
            case Unsettled::Newer:
                break;
        }
        return {};
    }

    Choice& add(Settling does)
    {
        Choice choice;
        choice.does = does;
        choice.entry = row_.entry;
        choice.subject = row_.subject;
        choice.at = row_.at;
        choices_.push_back(std::move(choice));
        return choices_.back();
    }

    // One value is one choice, however many devices have it.
    Result<void> rivals()
    {
        SPILE_ASSIGN(all, rivalsOf(database_, row_.entry));
        for (const Rival& rival : all) {
            const bool there =
                std::any_of(choices_.begin(), choices_.end(), [&](const Choice& choice) {
                    return choice.field == rival.field && choice.value == rival.value;
                });
            if (there) {
                continue;
            }
            SPILE_ASSIGN(name, nameOfDevice(database_, rival.device));
            Choice& choice = add(Settling::SetValue);
            choice.field = rival.field;
            choice.value = rival.value;
            choice.deviceName = name;
            SPILE_ASSIGN(times, countedTimes(database_, rival.amendment));
            choice.at = times.at;
        }
        return {};
    }

    Result<void> voids()
    {
        add(Settling::KeepVoided);
        add(Settling::BringBack);
        return {};
    }

    Result<void> fills()
    {
        constexpr int most = 10;
        std::vector<VolumeRecord> all;
        SPILE_TRY(database_.each(
            [&](const Row& row) {
                all.push_back({"fill", row.id<EntryId>(0), instantFromMs(row.integer(1)),
                               row.id<DeviceId>(2), row.integerIfAny(3), false});
                return Result<void>();
            },
            query_text::liveFills, row_.subject, most));
        return takeBacks(std::move(all));
    }

    // That both are right is said by the last one's own volume once more.
    Result<void> gauges()
    {
        SPILE_ASSIGN(all, gaugesTwice(database_, row_.subject));
        SPILE_TRY(takeBacks(all));
        if (!all.empty()) {
            Choice& keep = add(Settling::KeepBoth);
            keep.entry = all.back().entry;
            keep.field = static_cast<std::uint32_t>(Field::VolumeMl);
            keep.value =
                all.back().volumeMl ? ledger::Value(*all.back().volumeMl) : ledger::Value();
        }
        return {};
    }

    Result<void> takeBacks(const Result<std::vector<VolumeRecord>>& records)
    {
        if (!records) {
            return tl::unexpected(records.error());
        }
        for (const VolumeRecord& record : *records) {
            SPILE_ASSIGN(name, nameOfDevice(database_, record.device));
            Choice& choice = add(Settling::TakeBack);
            choice.entry = record.entry;
            choice.kind = record.kind;
            choice.at = record.at;
            choice.deviceName = name;
            choice.volumeMl = record.volumeMl;
        }
        return {};
    }

    Result<void> recordsSetAside()
    {
        constexpr int most = 200;
        SPILE_ASSIGN(records, setAsideOf(database_, row_.device, most));
        for (SetAsideRow& record : records) {
            Choice& choice = add(Settling::Adopt);
            choice.entry = record.entry;
            choice.kind = std::move(record.kind);
            choice.subject = record.subject;
            choice.at = record.at.value_or(choice.at);
        }
        return {};
    }

    Database& database_;
    const UnsettledRow& row_;
    std::vector<Choice> choices_;
};

}  // namespace

Result<void> noteBarrel(Database& database, Unsettled what, const SubjectId& barrel, bool open)
{
    return database.execute(
        open ? std::string_view("INSERT OR IGNORE INTO state_unsettled(what, entry) VALUES(?, ?)")
             : std::string_view("DELETE FROM state_unsettled WHERE what = ? AND entry = ?"),
        static_cast<std::int64_t>(what), barrel);
}

Result<std::string> nameOfDevice(Database& database, const DeviceId& device)
{
    return textOrNone(database, query_text::deviceName, device.bytes());
}

Result<std::vector<UnsettledRow>> toSettle(Database& database, int limit)
{
    return Listing(database, limit).run();
}

Result<int> howMuchToSettle(Database& database)
{
    constexpr int most = 100;
    SPILE_ASSIGN(rows, toSettle(database, most));
    return static_cast<int>(std::min<std::size_t>(rows.size(), most));
}

Result<std::vector<Choice>> choicesFor(Database& database, const UnsettledRow& row)
{
    return Choosing(database, row).run();
}

}  // namespace spile::cellar
