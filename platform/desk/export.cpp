// export: everything in plain files that need no Spile to read.
#include "core/cellar/exporting.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/wording.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <nlohmann/json.hpp>

namespace spile::desk {

using cellar::Cell;
using cellar::csvCell;
using cellar::ExportedEntry;
using cellar::ExportedTable;
using cellar::NamedValue;
using nlohmann::json;

namespace {

constexpr const char* readme =
    R"(What this folder holds: all records of a cellar, in plain text (UTF-8).

tables/*.csv    a table for each kind of record: barrel, fill, gauge, draw, taste and so on, a line
                a record, with all corrections in them and without what was taken back.
                "entry" is the record's id, "device" and "seq" who made it and as which number.
                "subject" is what it is about, by its id: in barrel.csv and most others a barrel,
                in person.csv a person, in lot.csv a lot. So the "subject" of a line of fill.csv
                and that of a line of barrel.csv say which barrel was filled; "person", "place",
                "batch" and "target" say the "subject" of a line of those tables.
                Lists of a record have tables of their own, such as taste_scores.csv: its "entry"
                is that of a line of taste.csv, "row" its place in the list.
photos.csv      which photo was taken for which record.
photos/         the photos: each under the SHA-256 of its bytes.
records.jsonl   every record as it was made, a JSON object a line, device by device. "id" is
                the SHA-256 of what was signed; "target" names the record that one amends,
                voids or answers, "overwrites" those that it was a correction of.
damaged.txt     only if a disk has spoilt something: what is left out, a line each.

Units. The end of a column's name says them; a number is always a whole one.
  _ml             millilitres
  _mm             millimetres
  _g, _mg         grams, milligrams
  _mc             1/1000 of a degree Celsius
  _pa             pascals above the air's pressure
  _s              seconds
  _ms             a moment: milliseconds since 1970-01-01 00:00 UTC. In a spreadsheet it is a date
                  and time after  = A1 / 86400000 + 25569.  since_boot_ms is a time span
  sg_e4           specific gravity times 10,000: 10240 is 1.0240
  abv_e2          alcohol, in % by volume times 100: 1150 is 11.5 %
  ph_e2           pH times 100
  co2_e2          volumes of carbon dioxide times 100
  humidity_e1     relative humidity in % times 10
  chance_e3       a chance times 1000
  cost_e2         the house's own money times 100
  score, liking, strength, low, high   1 to 9; an empty score: not judged
  direction       -1 too much, 0 right, 1 more
  bound           -1 at most, 1 at least, else as it was read
  date_precision  a date is true to 1 the day, 2 the month, 3 the year
  role            1 a desk, 2 a phone
Where a device's clock was wrong and "at_ms" was set right, "clock_ms" is what the clock had said;
else it is empty. In records.jsonl times are as the clock said them.
)";
json jsonOf(const ledger::Value& value, std::span<const cellar::ItemColumn> items);

json rowOf(const ledger::Value& row, std::span<const cellar::ItemColumn> items)
{
    const auto* columns = row.as<ledger::List>();
    if (columns == nullptr || columns->size() != items.size()) {
        return jsonOf(row, {});
    }
    json object = json::object();
    for (std::size_t i = 0; i < items.size(); ++i) {
        object[std::string(items[i].name)] = jsonOf((*columns)[i], {});
    }
    return object;
}

json jsonOf(const ledger::Value& value, std::span<const cellar::ItemColumn> items)
{
    if (const auto* flag = value.as<bool>()) {
        return *flag;
    }
    if (const auto* integer = value.as<std::int64_t>()) {
        return *integer;
    }
    if (const auto* text = value.as<std::string>()) {
        return *text;
    }
    if (const auto* bytes = value.as<Bytes>()) {
        return toHex(*bytes);
    }
    if (const auto* list = value.as<ledger::List>()) {
        json array = json::array();
        for (const ledger::Value& one : *list) {
            array.push_back(rowOf(one, items));
        }
        return array;
    }
    return nullptr;
}

json jsonOf(const ExportedEntry& entry)
{
    const ledger::Entry& core = entry.core;
    json object = {{"id", entry.id.hex()},
                   {"device", core.device.hex()},
                   {"seq", core.seq},
                   {"recorded", toIsoTime(core.recorded)},
                   {"at", toIsoTime(core.eventTime())},
                   {"kind", core.kind},
                   {"version", core.kindVersion},
                   {"subject", core.subject.hex()}};
    if (core.target) {
        object["target"] = core.target->hex();
    }
    for (const EntryId& older : core.overwrites) {
        object["overwrites"].push_back(older.hex());
    }
    for (const ledger::PhotoRef& photo : core.photos) {
        object["photos"].push_back(photo.hash.hex());
    }
    object["fields"] = json::object();
    for (const NamedValue& field : entry.fields) {
        object["fields"][field.name] = jsonOf(field.value, field.items);
    }
    return object;
}

Result<void> write(OutputFile& file, const std::string& text) { return file.append(asBytes(text)); }

class Exporting {
public:
    Exporting(FileSystem& files, cellar::Cellar& cellar, const Path& folder)
        : files_(files), cellar_(cellar), whole_(folder), folder_(folder.string() + ".unfinished")
    {
    }

    Result<json> all()
    {
        for (const Path& taken : {whole_, folder_}) {
            if (files_.exists(taken)) {
                return fail(ErrorCode::Conflict, taken.string(), "it exists",
                            "a new folder's name");
            }
        }
        for (const Path& part : {folder_, folder_ / "tables", folder_ / "photos"}) {
            SPILE_TRY(files_.makeFolder(part));
        }
        SPILE_TRY(writeWhole(files_, folder_ / "README.txt", asBytes(readme)));
        SPILE_ASSIGN(photos, copyPhotos());
        SPILE_ASSIGN(entries, writeEntries());
        std::uint64_t rows = 0;
        for (const ExportedTable& table : cellar::exportedTables()) {
            SPILE_ASSIGN(more, writeTable(table));
            rows += more;
        }
        if (!damaged_.empty()) {
            SPILE_TRY(writeWhole(files_, folder_ / "damaged.txt", asBytes(damaged_)));
        }
        SPILE_TRY(files_.syncFolder(folder_));
        SPILE_TRY(files_.rename(folder_, whole_));
        SPILE_TRY(files_.syncFolder(folderOf(whole_)));
        return json{{"folder", whole_.string()},
                    {"records", entries},
                    {"rows", rows},
                    {"photos", photos},
                    {"damaged", std::count(damaged_.begin(), damaged_.end(), '\n')}};
    }

private:
    Result<std::uint64_t> writeEntries()
    {
        SPILE_ASSIGN(file, files_.create(folder_ / "records.jsonl"));
        SPILE_ASSIGN(photos, files_.create(folder_ / "photos.csv"));
        SPILE_TRY(write(*photos, "photo,entry,kind,subject,recorded\r\n"));
        std::uint64_t count = 0;
        SPILE_TRY(cellar::eachEntry(
            cellar_.database(),
            [&](const ExportedEntry& entry) {
                ++count;
                return writeEntry(*file, *photos, entry);
            },
            [&](const Error& wrong) { damaged_ += wrong.subject + ": " + wrong.value + "\n"; }));
        SPILE_TRY(photos->sync());
        SPILE_TRY(file->sync());
        return count;
    }

    Result<void> writeEntry(OutputFile& records, OutputFile& photos,
                            const ExportedEntry& entry) const
    {
        for (const ledger::PhotoRef& photo : entry.core.photos) {
            SPILE_TRY(write(photos, photoLine(entry, photo.hash)));
        }
        return write(records, jsonOf(entry).dump() + "\n");
    }

    [[nodiscard]] std::string photoLine(const ExportedEntry& entry, const Sha256& photo) const
    {
        const auto file = photoFiles_.find(photo);
        return (file == photoFiles_.end() ? "not on this device" : "photos/" + file->second) + "," +
               entry.id.hex() + "," + csvCell(entry.core.kind) + "," + entry.core.subject.hex() +
               "," + toIsoTime(entry.core.recorded) + "\r\n";
    }

    Result<std::uint64_t> writeTable(const ExportedTable& table)
    {
        SPILE_ASSIGN(file, files_.create(folder_ / "tables" / (table.name + ".csv")));
        std::string head;
        for (const std::string& column : table.columns) {
            head += (head.empty() ? "" : ",") + column;
        }
        SPILE_TRY(write(*file, head + "\r\n"));
        std::uint64_t count = 0;
        SPILE_TRY(cellar::eachRow(cellar_.database(), table, [&](std::span<const Cell> cells) {
            ++count;
            std::string line;
            for (std::size_t i = 0; i < cells.size(); ++i) {
                line += i > 0 ? "," : "";
                line += csvCell(cells[i]);
            }
            return write(*file, line + "\r\n");
        }));
        SPILE_TRY(file->sync());
        return count;
    }

    Result<std::uint64_t> copyPhotos()
    {
        SPILE_ASSIGN(photos, cellar::photosHere(cellar_.database()));
        std::uint64_t copied = 0;
        for (const Sha256& photo : photos) {
            if (!cellar_.ledger().photos().isWhole(photo)) {
                damaged_ += "photo " + photo.hex() + ": missing or changed\n";
                continue;
            }
            const Path from = cellar_.ledger().photos().pathOf(photo);
            SPILE_ASSIGN(ending, endingOf(from));
            const std::string name = photo.hex() + ending;
            SPILE_TRY(copyWhole(files_, from, folder_ / "photos" / name));
            photoFiles_[photo] = name;
            ++copied;
        }
        return copied;
    }

    // By its first bytes: the name under which other programs open it.
    Result<std::string> endingOf(const Path& photo)
    {
        constexpr std::array<std::uint8_t, 3> jpeg = {0xff, 0xd8, 0xff};
        constexpr std::array<std::uint8_t, 3> png = {0x89, 'P', 'N'};
        SPILE_ASSIGN(file, files_.open(photo));
        std::array<std::uint8_t, 3> first{};
        SPILE_TRY(file->readAt(
            0, std::span(first).first(std::min<std::uint64_t>(first.size(), file->size()))));
        return std::string(first == jpeg ? ".jpg" : first == png ? ".png" : "");
    }

    FileSystem& files_;
    cellar::Cellar& cellar_;
    std::map<Sha256, std::string> photoFiles_;  // those that are here: their names in photos/
    Path whole_;
    Path folder_;          // until all of it is there
    std::string damaged_;  // what is left out, a line each
};

}  // namespace

int exportAll(Session& session, const std::string& folder)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    auto exported = Exporting(session.files(), **cellar, folder).all();
    if (!exported) {
        return session.refuse(exported.error());
    }
    const auto damaged = (*exported)["damaged"].get<std::uint64_t>();
    if (damaged > 0) {
        Session::remark("spile-desk: damaged here and left out: " + counted(damaged, "thing") +
                        ", listed in damaged.txt; a day file with everything from another device "
                        "brings them back.");
    }
    session.answer(*exported, folder + ": " + std::to_string((*exported)["records"].get<int>()) +
                                  " records, " + std::to_string((*exported)["photos"].get<int>()) +
                                  " photos\n");
    return Done;
}

}  // namespace spile::desk
