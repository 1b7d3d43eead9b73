// export: everything in plain files that need no Spile to read.
#include "core/cellar/exporting.hpp"
#include "platform/desk/commands.hpp"

#include <nlohmann/json.hpp>

namespace spile::desk {

using cellar::Cell;
using cellar::ExportedEntry;
using cellar::ExportedTable;
using cellar::NamedValue;
using nlohmann::json;

namespace {

constexpr const char* readme = R"(What this folder holds: all records of a cellar, in plain text.

records.jsonl   every record as it was made, a JSON object a line, device by device. "id" is
                the SHA-256 of what was signed; "target" names the record that one amends,
                voids or answers. A quantity's unit is in its name: volume_ml, temp_mc (1/1000
                of a degree Celsius), sg_e4 (specific gravity times 10,000).
tables/*.csv    the same by kind, with all corrections in them and without what was voided.
                Moments, such as "at_ms", are milliseconds since 1970-01-01 00:00 UTC. Where a
                device's clock was wrong and "at_ms" was set right, "clock_ms" is what the clock
                had said; else it is empty. In records.jsonl times are as the clock said them.
photos/         each photo under the SHA-256 of its bytes.
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
        SPILE_ASSIGN(entries, writeEntries());
        std::uint64_t rows = 0;
        for (const ExportedTable& table : cellar::exportedTables()) {
            SPILE_ASSIGN(more, writeTable(table));
            rows += more;
        }
        SPILE_ASSIGN(photos, copyPhotos());
        SPILE_TRY(files_.syncFolder(folder_));
        SPILE_TRY(files_.rename(folder_, whole_));
        SPILE_TRY(files_.syncFolder(folderOf(whole_)));
        return json{{"folder", whole_.string()},
                    {"records", entries.first},
                    {"damaged", entries.second},
                    {"rows", rows},
                    {"photos", photos}};
    }

private:
    // How many there are, and how many of the cellar's cannot be read.
    Result<std::pair<std::uint64_t, std::uint64_t>> writeEntries()
    {
        SPILE_ASSIGN(file, files_.create(folder_ / "records.jsonl"));
        std::uint64_t count = 0;
        SPILE_ASSIGN(damaged,
                     cellar::eachEntry(cellar_.database(), [&](const ExportedEntry& entry) {
                         ++count;
                         return write(*file, jsonOf(entry).dump() + "\n");
                     }));
        SPILE_TRY(file->sync());
        return std::pair(count, damaged);
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
                line += cellar::csvCell(cells[i]);
            }
            return write(*file, line + "\r\n");
        }));
        SPILE_TRY(file->sync());
        return count;
    }

    Result<std::uint64_t> copyPhotos()
    {
        SPILE_ASSIGN(photos, cellar::photosHere(cellar_.database()));
        for (const Sha256& photo : photos) {
            SPILE_TRY(copyWhole(files_, cellar_.ledger().photos().pathOf(photo),
                                folder_ / "photos" / photo.hex()));
        }
        return static_cast<std::uint64_t>(photos.size());
    }

    FileSystem& files_;
    cellar::Cellar& cellar_;
    Path whole_;
    Path folder_;  // until all of it is there
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
    if (const auto damaged = (*exported)["damaged"].get<std::uint64_t>(); damaged > 0) {
        Session::remark("spile-desk: " + counted(damaged, "record") +
                        " damaged and not in it. `check` lists them.");
    }
    session.answer(*exported, folder + ": " + std::to_string((*exported)["records"].get<int>()) +
                                  " records, " + std::to_string((*exported)["photos"].get<int>()) +
                                  " photos\n");
    return Done;
}

}  // namespace spile::desk
