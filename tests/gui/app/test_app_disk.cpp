// Disks that are full or refuse: a part of test_app.cpp.
#include "core/ledger/ballast.hpp"
#include "tests/gui/app/must.hpp"
#include "tests/gui/app/test_app.hpp"

namespace spile::support {

void TestApp::useDisk()
{
    full_ = false;
    disk_ = std::make_unique<FaultyFileSystem>(device_->files);
    disk_->fillWhile([this] { return !onlyRecords_ && isFull(); });
}

// Asked by all threads.
bool TestApp::isFull() const
{
    return full_ && (ballast_.empty() || device_->files.exists(ballast_));
}

void TestApp::setFreeBytes(double bytes)
{
    places_->free = static_cast<std::uint64_t>(bytes);
    disk_->setFree(places_->free);
}

void TestApp::keepBallast()
{
    must(ledger::keepBallast(device_->files, device_->random, device_->cellarFolder()));
}

void TestApp::fillDisk()
{
    const Path ballast = device_->cellarFolder() / "ballast";
    ballast_ = device_->files.exists(ballast) ? ballast : Path();
    onlyRecords_ = false;
    full_ = true;
}

void TestApp::fillDiskForRecords()
{
    fillDisk();
    onlyRecords_ = true;
}

void TestApp::refuseDisk() { disk_->failAt({FileCall::Lock, 1, ErrorCode::Storage, true}); }

void TestApp::mendDisk()
{
    full_ = false;
    disk_->failNever();
}

}  // namespace spile::support
