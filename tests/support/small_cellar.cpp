#include "tests/support/small_cellar.hpp"

#include "core/base/sha256.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/join_code.hpp"
#include "core/picture/encode.hpp"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace spile::support {

namespace {

template <class T>
T orThrow(Result<T> made)
{
    if (!made) {
        throw std::runtime_error(textOf(made.error()));
    }
    return std::move(*made);
}

}  // namespace

std::string textOf(const Error& error)
{
    return error.subject + ": " + error.value + " (" + error.limit + ")";
}

SmallCellar fillSmallCellar(cellar::Cellar& cellar)
{
    SmallCellar small;
    small.person = orThrow(cellar::registerPerson(cellar, "Ada"));
    small.batch = orThrow(cellar::registerBatch(cellar, {"Night Ferry"}));
    const auto barrel = orThrow(cellar::registerBarrel(
        cellar, {.mark = "Rum 3", .spirit = "rum", .size = litres(200), .fillsBefore = 0}));
    small.barrel = barrel.barrel;
    small.code = barrel.code;
    orThrow(cellar::recordFill(
        cellar, {.barrel = small.barrel, .batch = small.batch, .volume = litres(190)}));
    return small;
}

Bytes smallPicture(std::uint8_t shade)
{
    picture::Image image{8, 8, picture::PixelFormat::Rgb8, std::vector<std::uint8_t>(192, shade)};
    return orThrow(picture::encodePng(image));
}

std::vector<std::string> filesUnder(const Path& folder)
{
    std::vector<std::string> names;
    for (const auto& item : std::filesystem::recursive_directory_iterator(folder)) {
        if (item.is_regular_file()) {
            names.push_back(item.path().lexically_relative(folder).string());
        }
    }
    std::sort(names.begin(), names.end());
    return names;
}

Sha256 storedBytes(const Path& cellarFolder)
{
    Sha256Stream hash;
    const auto add = [&](const std::string& name) {
        hash.add(asBytes(name + "\n"));
        std::ifstream file(cellarFolder / name, std::ios::binary);
        const std::string bytes(std::istreambuf_iterator<char>(file), {});
        hash.add(asBytes(std::to_string(bytes.size()) + "\n" + bytes));
    };
    for (const std::string& name : filesUnder(cellarFolder)) {
        if (name == "ledger.db" || name == "ledger.db-wal" || name.starts_with("photos/")) {
            add(name);
        }
    }
    return hash.finish();
}

std::string problemsOf(cellar::Cellar& cellar)
{
    const auto report = cellar::check(cellar, {});
    if (!report) {
        return textOf(report.error());
    }
    std::string text;
    for (const Error& problem : report->problems) {
        text += textOf(problem) + "\n";
    }
    return text;
}

std::int64_t entryCount(cellar::Cellar& cellar)
{
    return orThrow(cellar.database().integer(0, "SELECT count(*) FROM entry"));
}

void admitDevice(cellar::Cellar& desk, cellar::Cellar& other, ledger::DeviceRole role)
{
    orThrow(cellar::admit(desk, cellar::joinCode(other.ledger().device()), "Another", role));
}

ledger::TakenIn carry(cellar::Cellar& from, cellar::Cellar& to, const Path& file)
{
    orThrow(cellar::handOut(from, file, std::nullopt));
    return orThrow(cellar::takeIn(to, file));
}

}  // namespace spile::support
