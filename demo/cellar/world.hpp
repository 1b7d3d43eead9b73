#pragma once

#include "core/base/job.hpp"
#include "core/cellar/acts/registering.hpp"
#include "demo/cellar/device.hpp"

#include <memory>
#include <string>
#include <vector>

namespace spile::demo {

/// One of the demo's barrels, as its makers know it.
struct InventedBarrel {
    SubjectId barrel;
    std::string code;
    std::string mark;
    std::size_t spirit = 0;  // in invented.hpp
    double sizeLitres = 0;
    std::optional<std::size_t> beer;  // what it holds
    std::optional<int> filledOnDay;
    double strength = 1;  // how fast this wood gives
};

/// The invented brewery after its 14 months: a desk and two phones, each with its own cellar
/// folder, made through the acts that the app uses. The same seed makes the same bytes.
class World {
public:
    World(FileSystem& files, const Path& deskFolder, const Path& phonesFolder, std::uint64_t seed);

    [[nodiscard]] Result<void> live(const Job& job);

    [[nodiscard]] Device& desk() { return desk_; }
    [[nodiscard]] Device& ada() { return ada_; }
    [[nodiscard]] Device& kim() { return kim_; }
    [[nodiscard]] const std::vector<SubjectId>& people() const { return people_; }
    [[nodiscard]] const std::vector<InventedBarrel>& barrels() const { return barrels_; }
    [[nodiscard]] std::size_t barrelCount() const { return barrels_.size(); }
    [[nodiscard]] Result<Sha256> stateRoot() const;

    /// Let time pass on all devices.
    void pass(Milliseconds time);
    /// Move all clocks to a time of day on a day of the demo.
    void moveTo(int day, Milliseconds timeOfDay);
    /// Each phone hands out to the desk and gets the desk's day file back.
    [[nodiscard]] Result<void> exchange();
    /// Return a picture of the beer in `barrel` as a JPEG file.
    [[nodiscard]] Result<Bytes> samplePicture(const InventedBarrel& barrel, int width, int height);
    /// Return a picture of the barrel's head with its label as a JPEG file.
    [[nodiscard]] Result<Bytes> headPicture(const InventedBarrel& barrel, int width, int height);
    /// What `taster` would score the barrel today, attribute by attribute.
    [[nodiscard]] int scoreOf(const InventedBarrel& barrel, std::size_t course, std::size_t taster,
                              int day);

private:
    friend class History;
    [[nodiscard]] Result<void> begin();
    [[nodiscard]] Result<void> letJoin(Device& phone);

    FileSystem& files_;
    Path phonesFolder_;
    Device desk_, ada_, kim_;
    SeededRandom chance_;  // what happens; the devices have their own for ids and keys
    std::vector<SubjectId> people_, places_, targets_;
    SubjectId vault_;  // the room they are in
    std::vector<std::optional<SubjectId>> batches_;
    std::vector<InventedBarrel> barrels_;
};

[[nodiscard]] Result<std::unique_ptr<World>> makeWorld(FileSystem& files, const Path& deskFolder,
                                                       const Path& phonesFolder, std::uint64_t seed,
                                                       const Job& job);

}  // namespace spile::demo
