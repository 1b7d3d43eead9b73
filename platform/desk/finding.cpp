#include "platform/desk/finding.hpp"

#include "core/scan/barrel_code.hpp"

#include <algorithm>
#include <cctype>

namespace spile::desk {

using cellar::BarrelRow;

namespace {

// The codes of this cellar that a mistyped one may have meant.
Result<std::string> likelyCodes(cellar::Cellar& cellar, const std::string& typed)
{
    std::string likely;
    for (const std::string& code : scan::nearCodes(cellar.identity().mark, typed)) {
        SPILE_ASSIGN(rows, cellar::barrelsWithCode(cellar.database(), code));
        for (const BarrelRow& row : rows) {
            likely += (likely.empty() ? "" : ", ") + scan::shown(code) +
                      (row.mark.empty() ? "" : " (" + row.mark + ")");
        }
    }
    return likely;
}

}  // namespace

Result<std::vector<BarrelRow>> findBarrel(cellar::Cellar& cellar, const std::string& typed)
{
    std::vector<BarrelRow> found;
    if (const auto code = scan::parseTyped(cellar.identity().mark, typed)) {
        SPILE_ASSIGN(rows, cellar::barrelsWithCode(cellar.database(), *code));
        found = std::move(rows);
    }
    if (found.empty()) {
        SPILE_ASSIGN(likely, likelyCodes(cellar, typed));
        return fail(
            ErrorCode::NotFound, "barrel", typed,
            likely.empty() ? "show barrels lists the codes" : "did you mean " + likely + "?");
    }
    return found;
}

Result<void> needFolderOf(FileSystem& files, const Path& file)
{
    const Path folder = folderOf(file);
    return files.exists(folder) ? Result<void>()
                                : fail(ErrorCode::Conflict, file.string(),
                                       "there is no folder " + folder.string(), "make it first");
}

// By name or by the beginning of the id.
Result<DeviceId> findDevice(cellar::Cellar& cellar, const std::string& wanted)
{
    std::vector<DeviceId> found;
    SubjectId after;
    constexpr int page = 200;
    for (bool more = true; more;) {
        SPILE_ASSIGN(devices, cellar::named(cellar.database(), "device", after, page));
        more = devices.size() == page;
        for (const cellar::NamedRow& row : devices) {
            after = row.subject;
            if (row.name == wanted || row.subject.hex().starts_with(wanted)) {
                found.push_back(*DeviceId::fromBytes(row.subject.bytes()));
            }
        }
    }
    if (found.size() != 1) {
        return fail(
            ErrorCode::NotFound, "device", wanted,
            found.empty() ? "show devices lists them" : "more than one is called so; give its id");
    }
    return found.front();
}

}  // namespace spile::desk
