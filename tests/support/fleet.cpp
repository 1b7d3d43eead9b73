#include "tests/support/fleet.hpp"

#include "core/base/sha256.hpp"
#include "core/cellar/join_code.hpp"
#include "tests/support/counting_vfs.hpp"

#include <stdexcept>

namespace spile::support {

namespace {

constexpr const char* vfs = "counting";

template <class T>
T orThrow(Result<T> made)
{
    if (!made) {
        throw std::runtime_error(textOf(made.error()));
    }
    return std::move(*made);
}

Path backupOf(const Path& folder) { return folder.string() + ".backup"; }

}  // namespace

Fleet::Fleet(std::size_t devices)
{
    registerCountingVfs().passSyncsOn(false);
    for (std::size_t i = 0; i < devices; ++i) {
        members_.push_back(std::make_unique<Member>(100 + i));
        members_.back()->folder = folder_.path() / ("device" + std::to_string(i));
    }
    Member& desk = *members_.front();
    desk.cellar = orThrow(
        cellar::Cellar::create(desk.folder, outside(desk), {"Test cellar", "7K2Q", "Desk"}, vfs));
    small_ = fillSmallCellar(*desk.cellar);
    const Path start = handOut(0, std::nullopt);
    for (std::size_t i = 1; i < devices; ++i) {
        Member& member = *members_[i];
        member.cellar =
            orThrow(cellar::Cellar::join(member.folder, outside(member), start, {}, vfs));
    }
}

Outside Fleet::outside(Member& member)
{
    return {member.clock, files_, member.random, member.ids, member.keys};
}

void Fleet::open(Member& member)
{
    member.cellar = orThrow(cellar::Cellar::open(member.folder, outside(member), vfs));
}

Path Fleet::handOut(std::size_t from, std::optional<std::size_t> to)
{
    const Path file = folder_.path() / ("day" + std::to_string(handed_++) + ".spile");
    std::optional<DeviceId> receiver;
    if (to) {
        receiver = cellar(*to).ledger().device();
    }
    orThrow(cellar::handOut(cellar(from), file, receiver));
    return file;
}

ledger::TakenIn Fleet::takeIn(std::size_t to, const Path& file)
{
    return orThrow(cellar::takeIn(cellar(to), file));
}

bool Fleet::exchangeAll()
{
    bool news = false;
    for (std::size_t i = 1; i < size(); ++i) {
        const auto code = cellar::joinCode(cellar(i).ledger().device());
        // Refused if it is admitted already.
        std::ignore = cellar::admit(cellar(0), code, "Phone", ledger::DeviceRole::Phone);
    }
    std::vector<Path> files;
    for (std::size_t i = 0; i < size(); ++i) {
        files.push_back(handOut(i, std::nullopt));
    }
    for (std::size_t i = 0; i < size(); ++i) {
        for (std::size_t k = 0; k < size(); ++k) {
            const auto taken = takeIn(i, files[(i + k) % size()]);  // each in another order
            news |= taken.added > 0 || taken.waiting > 0 || taken.renewed;
        }
    }
    return news;
}

void Fleet::exchangeUntilQuiet()
{
    constexpr int most = 12;
    for (int i = 0; i < most && exchangeAll(); ++i) {
    }
}

void Fleet::backUp(std::size_t i)
{
    Member& member = at(i);
    member.cellar.reset();
    std::filesystem::remove_all(backupOf(member.folder));
    std::filesystem::copy(member.folder, backupOf(member.folder),
                          std::filesystem::copy_options::recursive);
    member.keysOfBackup = member.keys;
    open(member);
}

bool Fleet::restore(std::size_t i)
{
    Member& member = at(i);
    if (!std::filesystem::exists(backupOf(member.folder))) {
        return false;
    }
    member.cellar.reset();
    std::filesystem::remove_all(member.folder);
    std::filesystem::copy(backupOf(member.folder), member.folder,
                          std::filesystem::copy_options::recursive);
    member.keys = member.keysOfBackup;
    open(member);
    return true;
}

Sha256 recordBytes(cellar::Cellar& cellar)
{
    Sha256Stream hash;
    const auto read = cellar.database().each(
        [&](const ledger::Row& row) {
            for (int column = 0; column < 3; ++column) {
                hash.add(sha256(row.blob(column)).bytes());
            }
            return Result<void>();
        },
        "SELECT core, body, signature FROM entry ORDER BY id");
    orThrow(read ? Result<bool>(true) : Result<bool>(fail(ErrorCode::Storage, "entry")));
    return hash.finish();
}

}  // namespace spile::support
