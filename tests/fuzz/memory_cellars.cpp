#include "tests/fuzz/memory_cellars.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "tests/fuzz/input.hpp"
#include "tests/support/small_cellar.hpp"

#include <sqlite3.h>

namespace spile::fuzz {

namespace {

template <class T>
T must(Result<T> done)
{
    if (!done) {
        stop("the cellars cannot be made", support::textOf(done.error()));
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*done);
    }
}

sqlite3* openDatabase(const std::string& name, const char* vfs)
{
    sqlite3* handle = nullptr;
    require(sqlite3_open_v2(name.c_str(), &handle, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE,
                            vfs) == SQLITE_OK,
            "no database");
    return handle;
}

void copyDatabase(sqlite3* from, sqlite3* to)
{
    sqlite3_backup* copy = sqlite3_backup_init(to, "main", from, "main");
    require(copy != nullptr && sqlite3_backup_step(copy, -1) == SQLITE_DONE &&
                sqlite3_backup_finish(copy) == SQLITE_OK,
            "the database cannot be copied");
}

Bytes handedOut(support::TestDevice& device, cellar::Cellar& cellar,
                const std::optional<DeviceId>& to)
{
    const Path file = device.folder.path() / "day.spile";
    must(cellar::handOut(cellar, file, to));
    return must(readWhole(device.files, file, std::uint64_t{1} << 20U));
}

ledger::SigningKey keyOf(support::TestDevice& device, KeyName name = KeyName::Device)
{
    return ledger::SigningKey(**device.keys.load(name));
}

// One record of each sort that a day file treats in its own way.
void recordMuch(cellar::Cellar& phone)
{
    const auto barrel = must(cellar::barrels(phone.database(), {}, 1)).at(0).barrel;
    const auto person = must(cellar::named(phone.database(), "person", {}, 1)).at(0).subject;
    const auto drawn = must(cellar::recordDraw(
        phone, {.barrel = barrel, .volume = millilitres(100), .method = "sample hole"}));
    must(cellar::amend(phone, drawn,
                       {{static_cast<std::uint32_t>(cellar::Field::VolumeMl), std::int64_t{90}}}));
    const auto sheet = must(cellar::openSheet(phone, barrel, person));
    must(cellar::tapScore(phone, sheet, "oak", 6));
    must(cellar::tapReading(phone, sheet, cellar::Measure::Ph, 3.4));
    must(cellar::closeSheet(phone, sheet));
    const Bytes picture = support::smallPicture();
    must(cellar::recordPhoto(phone, {.barrel = barrel, .picture = picture, .purpose = "colour"}));
    const auto wrong = must(cellar::recordDraw(
        phone, {.barrel = barrel, .volume = millilitres(50), .method = "sample hole"}));
    must(cellar::voidEntry(phone, wrong));
    const auto lot = must(cellar::registerLot(phone, {.name = "Lot 1"}));
    must(cellar::recordTransfer(phone, {.lot = lot, .from = barrel, .volume = litres(20)}));
}

}  // namespace

MemoryCellars::MemoryCellars()
{
    support::TestDevice deskDevice(1), phoneDevice(2), strangerDevice(3);
    const auto desk = deskDevice.newCellar();
    const Path file = deskDevice.folder.path() / "start.spile";
    static_cast<void>(support::fillSmallCellar(*desk));
    must(cellar::handOut(*desk, file, {}));
    const auto phone = phoneDevice.join(file);
    support::admitDevice(*desk, *phone);
    support::carry(*desk, *phone, file);
    recordMuch(*phone);
    const Path ofPhone = phoneDevice.folder.path() / "start.spile";
    must(cellar::handOut(*phone, ofPhone, {}));
    const auto stranger = strangerDevice.join(ofPhone);
    recordMuch(*stranger);

    cellar_ = desk->identity().id;
    dayFiles_ = {handedOut(phoneDevice, *phone, desk->ledger().device()),
                 handedOut(phoneDevice, *phone, {}), handedOut(strangerDevice, *stranger, {})};
    keys_ = {keyOf(phoneDevice), keyOf(deskDevice), keyOf(strangerDevice),
             keyOf(deskDevice, KeyName::Owner)};
    keepDesk(deskDevice);
}

MemoryCellars::~MemoryCellars() { sqlite3_close(atFirst_); }

void MemoryCellars::keepDesk(support::TestDevice& device)
{
    keysAtFirst_ = device.keys;
    sqlite3* onDisk = openDatabase((device.cellarFolder() / "ledger.db").string(), nullptr);
    sqlite3_int64 size = 0;
    unsigned char* bytes = sqlite3_serialize(onDisk, "main", &size, 0);
    sqlite3_close(onDisk);
    require(bytes != nullptr, "the desk's database cannot be read");
    bytes[18] = bytes[19] = 1;  // without a write-ahead log, which needs a disk
    atFirst_ = openDatabase(":memory:", nullptr);
    require(sqlite3_deserialize(atFirst_, "main", bytes, size, size,
                                SQLITE_DESERIALIZE_FREEONCLOSE) == SQLITE_OK,
            "the desk's database cannot be kept");
}

cellar::Cellar& MemoryCellars::renewDesk()
{
    static constexpr const char* inMemory = "memdb";  // SQLite's own layer for that
    desk_.reset();
    files_ = support::MemoryFileSystem();
    keyStore_ = keysAtFirst_;
    const ledger::CellarFolder folder{"/desk.cellar"};
    must(files_.makeFolder(folder.photos()));
    must(files_.makeFolder(folder.outbox()));
    must(files_.create(folder.database()));  // looked for, but SQLite keeps its own
    // What is in memory lasts while somebody has it open.
    sqlite3* live = openDatabase(folder.database().string(), inMemory);
    copyDatabase(atFirst_, live);
    desk_ = must(
        cellar::Cellar::open(folder.folder, {clock_, files_, random_, ids_, keyStore_}, inMemory));
    sqlite3_close(live);
    return *desk_;
}

}  // namespace spile::fuzz
