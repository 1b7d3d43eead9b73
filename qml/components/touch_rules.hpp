#pragma once

#include <vector>

namespace spile::components {

/// One finger, palm or drop on the screen. Times are in milliseconds of one clock, lengths in
/// millimetres.
struct Contact {
    int id = 0;
    double began = 0;
    double ended = -1;  // less than `began`: it is still there
    double x = 0;       // where it began, from the left side of the window
    double widest = 0;  // the largest diameter it has had; 0 if the screen does not say

    [[nodiscard]] bool isOver() const { return ended >= began; }
};

/// Why a contact is not believed to be a tap.
enum class Refusal { None, Together, Outlasted, AtTheSide, TooWide, TooShort };

/// The numbers of the rules. No phone, glove or water was measured: they are reasoned, and to be
/// tuned.
struct TouchLimits {
    double shortest = 30;  // ms; a drop is shorter
    double together = 80;  // ms between the beginnings of contacts of one splash
    double side = 2;       // mm; there the hand grips
    double widest = 22;    // mm; a palm
};

inline constexpr TouchLimits dryLimits{};
inline constexpr TouchLimits wetLimits{50, 80, 2, 22};

/// Return why `contacts[which]` is refused as a tap, or None.
///
/// Shape     `contacts` in any order; those that are over are needed for 80 ms after they began.
/// Range     `which` < contacts.size(); `windowWidth` in millimetres.
/// Limits    a contact that is still there is never too short.
[[nodiscard]] Refusal judgeContact(const std::vector<Contact>& contacts, std::size_t which,
                                   double windowWidth, const TouchLimits& limits);

/// Counts refusals and finds the screen wet after three within two seconds. It is dry again when
/// somebody says so.
class Wetness {
public:
    /// Note a refusal at `time` [ms].
    void refused(double time);
    void dry();
    [[nodiscard]] bool isWet() const { return wet_; }

private:
    std::vector<double> recent_;
    bool wet_ = false;
};

}  // namespace spile::components
