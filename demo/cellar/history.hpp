#pragma once

#include "core/cellar/acts/act.hpp"
#include "demo/cellar/world.hpp"

namespace spile::demo {

/// What happens in the invented brewery, day by day.
class History {
public:
    explicit History(World& world) : world_(world) {}

    [[nodiscard]] Result<void> live(int day);

private:
    [[nodiscard]] Result<void> receiveBarrels(int day);
    [[nodiscard]] Result<void> receiveBarrel(std::size_t number);
    [[nodiscard]] Result<void> receiveFull(std::size_t number);
    [[nodiscard]] Result<void> brew(int day);
    [[nodiscard]] Result<void> readAir(int day);
    [[nodiscard]] Result<void> fill(std::size_t beer, int day);
    [[nodiscard]] Result<void> look(InventedBarrel& barrel, int day);
    [[nodiscard]] Result<void> gauge(const InventedBarrel& barrel, int age);
    [[nodiscard]] Result<void> taste(const InventedBarrel& barrel, int day, int age);
    [[nodiscard]] Result<void> tasteAs(Device& phone, const InventedBarrel& barrel,
                                       std::size_t person, int day);
    [[nodiscard]] Result<void> decide(InventedBarrel& barrel, int day, int age);
    // lot.cpp
    [[nodiscard]] Result<void> moveIntoLot(const InventedBarrel& barrel, int day);
    [[nodiscard]] Result<void> tendLot(int day);
    [[nodiscard]] Result<void> putCoconutIn();
    [[nodiscard]] Result<void> packLot();
    [[nodiscard]] Result<void> releaseSome();
    [[nodiscard]] cellar::Circumstance by(std::size_t person, std::string note = {}) const;
    [[nodiscard]] Device& phoneOf(std::size_t person);

    World& world_;
    std::size_t nextToFill_ = 0;
    int emptied_ = 0;
    std::optional<SubjectId> lot_;  // of the first barrels that were emptied
    int lotFilledOn_ = 0;
    EntryId coconut_, hold_, packed_;
};

}  // namespace spile::demo
