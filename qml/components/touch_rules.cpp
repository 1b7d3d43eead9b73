#include "qml/components/touch_rules.hpp"

#include <algorithm>
#include <cmath>

namespace spile::components {

static bool beganTogether(const Contact& one, const Contact& other, const TouchLimits& limits)
{
    return std::abs(one.began - other.began) < limits.together;
}

// A palm that rests while a finger taps.
static bool isOutlasted(const Contact& resting, const Contact& later)
{
    return later.began > resting.began && (!resting.isOver() || later.began < resting.ended);
}

Refusal judgeContact(const std::vector<Contact>& contacts, std::size_t which, double windowWidth,
                     const TouchLimits& limits)
{
    const Contact& contact = contacts[which];
    const auto anyOther = [&](auto&& holds) {
        return std::any_of(contacts.begin(), contacts.end(), [&](const Contact& other) {
            return &other != &contact && holds(other);
        });
    };
    if (anyOther([&](const Contact& other) { return beganTogether(contact, other, limits); })) {
        return Refusal::Together;
    }
    if (anyOther([&](const Contact& other) { return isOutlasted(contact, other); })) {
        return Refusal::Outlasted;
    }
    if (contact.x < limits.side || contact.x > windowWidth - limits.side) {
        return Refusal::AtTheSide;
    }
    if (contact.widest > limits.widest) {
        return Refusal::TooWide;
    }
    if (contact.isOver() && contact.ended - contact.began < limits.shortest) {
        return Refusal::TooShort;
    }
    return Refusal::None;
}

void Wetness::refused(double time)
{
    constexpr double memory = 2000;
    recent_.erase(std::remove_if(recent_.begin(), recent_.end(),
                                 [&](double earlier) { return time - earlier > memory; }),
                  recent_.end());
    recent_.push_back(time);
    wet_ = wet_ || recent_.size() >= 3;
}

void Wetness::dry()
{
    recent_.clear();
    wet_ = false;
}

}  // namespace spile::components
