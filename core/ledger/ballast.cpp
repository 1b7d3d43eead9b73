#include "core/ledger/ballast.hpp"

#include <tuple>

namespace spile::ledger {

namespace {

constexpr std::uint64_t pieceBytes = std::uint64_t{1} << 20U;

Path ballastIn(const Path& folder) { return folder / "ballast"; }
Path unfinishedIn(const Path& folder) { return folder / "ballast.new"; }

Result<void> writeBallast(FileSystem& files, Random& random, const Path& file, const Job& job)
{
    SPILE_ASSIGN(out, files.create(file));
    Bytes piece(pieceBytes);
    for (std::uint64_t done = 0; done < ballastBytes; done += pieceBytes) {
        random.fill(piece);
        SPILE_TRY(out->append(piece));
        if (!job.advance(done + pieceBytes, ballastBytes)) {
            return fail(ErrorCode::Cancelled, "ballast");
        }
    }
    return out->sync();
}

}  // namespace

Result<void> keepBallast(FileSystem& files, Random& random, const Path& folder, const Job& job)
{
    const Path unfinished = unfinishedIn(folder);
    if (files.exists(unfinished)) {  // left by a process that was killed
        SPILE_TRY(files.remove(unfinished));
    }
    SPILE_ASSIGN(free, files.freeBytes(folder));
    if (files.exists(ballastIn(folder)) || free < freeForBallast) {
        return {};
    }
    auto written = writeBallast(files, random, unfinished, job);
    if (written) {
        written = files.rename(unfinished, ballastIn(folder));
    }
    if (written) {
        return files.syncFolder(folder);
    }
    if (files.exists(unfinished)) {
        std::ignore = files.remove(unfinished);  // what went wrong before is told
    }
    return written.error().code == ErrorCode::StorageFull ? Result<void>() : written;
}

bool ballastHelps(const Error& error)
{
    // So Database calls itself in its errors; a file elsewhere has its path there.
    return error.code == ErrorCode::StorageFull && error.subject == "ledger.db";
}

bool giveUpBallast(FileSystem& files, const Path& folder)
{
    return files.exists(ballastIn(folder)) && files.remove(ballastIn(folder)).has_value();
}

}  // namespace spile::ledger
