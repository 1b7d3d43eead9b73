// What other devices leave to be decided on this one: a part of test_app.cpp.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/owner_key_text.hpp"
#include "core/cellar/settling.hpp"
#include "tests/gui/app/must.hpp"
#include "tests/gui/app/test_app.hpp"

namespace spile::support {

namespace {

using cellar::Cellar;
using cellar::Unsettled;

constexpr auto copyAll = std::filesystem::copy_options::recursive;

Path handedOut(TestDevice& device, Cellar& cellar)
{
    static int number = 0;
    const Path file = device.folder.path() / ("out" + std::to_string(++number) + ".spile");
    must(cellar::handOut(cellar, file, {}));
    return file;
}

EntryId drawn(Cellar& cellar, const SubjectId& barrel)
{
    return must(cellar::recordDraw(
        cellar, {.barrel = barrel, .volume = millilitres(100), .method = "valve"}));
}

void corrected(Cellar& cellar, const EntryId& entry, std::int64_t ml)
{
    must(cellar::amend(cellar, entry, {{static_cast<std::uint32_t>(cellar::Field::VolumeMl), ml}}));
}

// Another device that has joined with all that this one knows.
struct Other {
    std::unique_ptr<TestDevice> device;
    std::unique_ptr<Cellar> cellar;

    Other(TestDevice& from, Cellar& known)
    {
        static std::uint64_t seed = 1000;
        device = std::make_unique<TestDevice>(++seed);
        device->clock.setWall(from.clock.now() + std::chrono::minutes(1));
        cellar = device->join(handedOut(from, known));
    }

    [[nodiscard]] DeviceId id() const { return cellar->ledger().device(); }
    void admittedBy(Cellar& desk, const std::string& name,
                    ledger::DeviceRole role = ledger::DeviceRole::Phone) const
    {
        must(cellar::admit(desk, cellar::joinCode(id()), name, role));
    }
    void handTo(Cellar& receiver) const
    {
        must(cellar::takeIn(receiver, handedOut(*device, *cellar)));
    }
};

// A copy of a device as it was, which goes on as if it were the same.
void setBack(TestDevice& device, std::unique_ptr<Cellar>& cellar,
             const std::function<void(Cellar&)>& meanwhile)
{
    cellar.reset();
    const Path kept = device.cellarFolder().string() + ".kept";
    std::filesystem::remove_all(kept);
    std::filesystem::copy(device.cellarFolder(), kept, copyAll);
    const MemoryKeyStore keys = device.keys;
    cellar = device.reopen();
    meanwhile(*cellar);
    cellar.reset();
    std::filesystem::remove_all(device.cellarFolder());
    std::filesystem::copy(kept, device.cellarFolder(), copyAll);
    device.keys = keys;
    device.clock.pass(std::chrono::minutes(1));
    cellar = device.reopen();
}

void becomesNewer(Cellar& cellar)
{
    must(cellar.database().run(
        "UPDATE meta SET value = 1000 WHERE key = 'projection'; PRAGMA user_version = 1000;"));
    must(cellar.database().checkpoint(0));
}

}  // namespace

void TestApp::leaveToSettle(int what)
{
    change([&](Cellar& ours) {
        const SubjectId barrel = barrels_.begin()->second.barrel;
        switch (static_cast<Unsettled>(what)) {
            case Unsettled::TwoValues:
            case Unsettled::VoidedAndCorrected: {
                const EntryId draw = drawn(ours, barrel);
                const Other other(*device_, ours);
                other.admittedBy(ours, "Phone of Kim");
                corrected(*other.cellar, draw, 90);
                if (static_cast<Unsettled>(what) == Unsettled::TwoValues) {
                    corrected(ours, draw, 70);
                } else {
                    must(cellar::voidEntry(ours, draw));
                }
                other.handTo(ours);
                break;
            }
            case Unsettled::SameCode: {
                const Other other(*device_, ours);
                other.admittedBy(ours, "Phone of Kim");
                const std::string code = must(cellar::spareCodes(ours, 1)).front();
                must(cellar::registerBarrel(ours, {.mark = "Port 1", .code = code}));
                must(cellar::registerBarrel(*other.cellar, {.mark = "Port 2", .code = code}));
                other.handTo(ours);
                break;
            }
            case Unsettled::FilledTwice: {
                const auto empty = must(cellar::registerBarrel(ours, {.mark = "Gin 1"}));
                const Other other(*device_, ours);
                other.admittedBy(ours, "Phone of Kim");
                must(cellar::recordFill(ours, {.barrel = empty.barrel, .volume = litres(181)}));
                must(cellar::recordFill(*other.cellar,
                                        {.barrel = empty.barrel, .volume = litres(182)}));
                other.handTo(ours);
                break;
            }
            case Unsettled::GaugedTwice: {
                const Other other(*device_, ours);
                other.admittedBy(ours, "Phone of Kim");
                must(cellar::recordGauge(
                    ours, {.barrel = barrel, .volume = litres(50), .method = "dip"}));
                must(cellar::recordGauge(
                    *other.cellar, {.barrel = barrel, .volume = litres(51), .method = "dip"}));
                other.handTo(ours);
                break;
            }
            case Unsettled::Overfull:
                must(cellar::recordGauge(
                    ours, {.barrel = barrel, .volume = litres(900), .method = "dip"}));
                break;
            case Unsettled::Overdrawn: {
                must(cellar::recordGauge(ours,
                                         {.barrel = barrel, .volume = litres(3), .method = "dip"}));
                const Other other(*device_, ours);
                other.admittedBy(ours, "Phone of Kim");
                for (Cellar* cellar : {&ours, other.cellar.get()}) {
                    must(cellar::recordDraw(
                        *cellar, {.barrel = barrel, .volume = litres(2), .method = "valve"}));
                }
                other.handTo(ours);
                break;
            }
            case Unsettled::Copied: {
                Other other(*device_, ours);
                other.admittedBy(ours, "Phone of Lee");
                setBack(*other.device, other.cellar, [&](Cellar& copy) {
                    drawn(copy, barrel);
                    must(cellar::takeIn(ours, handedOut(*other.device, copy)));
                });
                drawn(*other.cellar, barrel);
                other.handTo(ours);
                break;
            }
            case Unsettled::SetAside: {
                const Other other(*device_, ours);
                other.admittedBy(ours, "Phone of Max");
                must(cellar::cutOff(ours, {.device = other.id()}));
                for (int i = 0; i < 3; ++i) {
                    drawn(*other.cellar, barrel);
                }
                other.handTo(ours);
                break;
            }
            case Unsettled::Waiting: {
                const Other other(*device_, ours);
                drawn(*other.cellar, barrel);
                other.handTo(ours);
                break;
            }
            case Unsettled::Newer: {
                auto written = must(ours.ledger().change());
                must(written.record({"from_the_future", barrel, {}, {}, {}, {}, {}}));
                must(written.commit());
                break;
            }
        }
    });
}

void TestApp::addPhone(const QString& name)
{
    change([&](Cellar& ours) { Other(*device_, ours).admittedBy(ours, name.toStdString()); });
}

void TestApp::phoneAheadOnStick(const QString& name, int minutes)
{
    change([&](Cellar& ours) {
        const Other other(*device_, ours);
        other.admittedBy(ours, name.toStdString());
        other.device->clock.setWall(device_->clock.now() + std::chrono::minutes(minutes));
        drawn(*other.cellar, barrels_.begin()->second.barrel);
        must(cellar::handOut(*other.cellar, device_->folder.path() / "stick" / "ahead.spile", {}));
    });
}

void TestApp::cutOffPhoneOnStick(const QString& name)
{
    change([&](Cellar& ours) {
        const Other other(*device_, ours);
        other.admittedBy(ours, name.toStdString());
        must(cellar::cutOff(ours, {.device = other.id()}));
        drawn(*other.cellar, barrels_.begin()->second.barrel);
        must(cellar::handOut(*other.cellar, device_->folder.path() / "stick" / "lost.spile", {}));
    });
}

QString TestApp::newPhone()
{
    std::string code;
    change([&](Cellar& ours) { code = cellar::joinCode(Other(*device_, ours).id()); });
    return QString::fromStdString(code);
}

QString TestApp::symbolText(const QString& code, const QString& mark) const
{
    return QString::fromStdString(cellar::joinSymbolText(
        {mark.toStdString(), must(cellar::parseJoinCode(code.toStdString()))}));
}

QString TestApp::ownersSymbol() const
{
    return QString::fromStdString(cellar::ownerSymbolText(KeySeed({1, 2, 3})));
}

void TestApp::joinAsPhone()
{
    end();
    auto desk = std::move(device_);
    auto ours = desk->reopen();
    const Path file = handedOut(*desk, *ours);
    device_ = std::make_unique<TestDevice>(900);
    device_->clock.setWall(desk->clock.now());
    useDisk();
    std::filesystem::create_directories(device_->folder.path() / "stick");
    places_ = std::make_unique<TestPlaces>(device_->folder.path() / "stick");
    device_->join(file);
    start();
}

void TestApp::cutOffByOther()
{
    change([&](Cellar& ours) {
        const Other other(*device_, ours);
        other.admittedBy(ours, "Desk of Kim", ledger::DeviceRole::Desk);
        must(cellar::takeIn(*other.cellar, handedOut(*device_, ours)));
        must(cellar::cutOff(*other.cellar, {.device = ours.ledger().device()}));
        other.handTo(ours);
    });
}

void TestApp::setBackWithFileOnStick()
{
    end();
    auto ours = device_->reopen();
    setBack(*device_, ours, [&](Cellar& copy) {
        drawn(copy, barrels_.begin()->second.barrel);
        must(cellar::handOut(copy, device_->folder.path() / "stick" / "later.spile", {}));
    });
    ours.reset();
    start();
}

void TestApp::becomeNewer() { change(becomesNewer); }

}  // namespace spile::support
