// 500 MB of photos packed into a day file, which is read back and verified, beside copying the same
// bytes into one file with their SHA-256 and a sync; then the file taken in.
#include "core/base/sha256.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/ledger/bundle_reader.hpp"
#include "tests/bench/report.hpp"
#include "tests/support/test_device.hpp"

namespace {

using namespace spile;

constexpr int photos = 250;
constexpr std::size_t photoBytes = 2'000'000;
constexpr int rounds = 3;

// Random bytes, as the entropy-coded part of a JPEG very nearly is.
std::vector<Path> takePhotos(support::TestDevice& device, cellar::Cellar& cellar)
{
    const auto barrel = cellar::registerBarrel(cellar, {.mark = "Rum", .size = litres(200)});
    bench::must(barrel);
    std::vector<Path> files;
    Bytes picture(photoBytes);
    for (int i = 0; i < photos; ++i) {
        device.random.fill(picture);
        const auto hash = cellar.ledger().photos().add(picture);
        bench::must(hash);
        auto entry = cellar::photoEntry(barrel->barrel, {*hash, picture.size()}, "head", {});
        bench::must(entry);
        auto change = cellar.ledger().change();
        bench::must(change);
        bench::must(change->record(std::move(*entry)));
        bench::must(change->commit());
        files.push_back(cellar.ledger().photos().pathOf(*hash));
    }
    return files;
}

void copyAll(FileSystem& files, const std::vector<Path>& photoFiles, const Path& to)
{
    auto out = files.create(to);
    bench::must(out);
    Sha256Stream hash;
    Bytes piece(std::size_t{1} << 16U);
    for (const Path& photo : photoFiles) {
        auto in = files.open(photo);
        bench::must(in);
        for (std::uint64_t at = 0; at < (*in)->size(); at += piece.size()) {
            const std::span part =
                std::span(piece).first(std::min<std::uint64_t>((*in)->size() - at, piece.size()));
            bench::must((*in)->readAt(at, part));
            hash.add(part);
            bench::must((*out)->append(part));
        }
    }
    if (hash.finish().isZero()) {
        throw std::runtime_error("no hash");
    }
    bench::must((*out)->sync());
}

bench::Times takenIn(const Path& dayFile)
{
    support::TestDevice other(62);
    auto bundle = ledger::BundleReader::open(other.files, dayFile);
    bench::must(bundle);
    cellar::State state;
    auto replica = ledger::Ledger::createReplica(other.cellarFolder(), other.outside(), state,
                                                 bundle->header().cellar);
    bench::must(replica);
    bench::Times times;
    times.add([&] {
        bench::must(ledger::takeIn(**replica, dayFile, ledger::SignatureCheck::EveryEntry, {}));
    });
    return times;
}

void run()
{
    support::TestDevice device(61);
    const auto desk = device.newCellar();
    const std::vector<Path> files = takePhotos(device, *desk);
    const Path copy = device.folder.path() / "copy";
    const Path dayFile = device.folder.path() / "photos.spile";
    bench::Times copying, packing, taking;
    for (int i = 0; i < rounds; ++i) {  // in turns, so that a busy disk hurts all alike
        copying.add([&] { copyAll(device.files, files, copy); });
        packing.add([&] { bench::must(cellar::handOut(*desk, dayFile, {})); });
        taking.addAll(takenIn(dayFile));
        bench::must(device.files.remove(copy));
        bench::must(device.files.remove(dayFile));
    }
    bench::title("500 MB of photos (" + std::to_string(photos) + " of 2 MB), " +
                 std::to_string(rounds) + " rounds in turns");
    bench::row("copy, SHA-256 and sync of the same bytes", copying);
    bench::row("packed into a day file and verified", packing, copying, "<= 1.7");
    bench::processorRow(packing, copying);
    bench::row("taken in: verified, each stored durably", taking, copying, "(none)");
}

}  // namespace

int main() { return bench::guarded(run); }
