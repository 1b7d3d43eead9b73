#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"
#include "core/wood/spread.hpp"

#include <cstdint>
#include <span>

/// The oxygen a barrel of beer has taken up: through the wood and each time it is opened.
///
/// Masses with their 80 % interval. Where beer meets air, all its oxygen is taken as absorbed.
namespace spile::wood {

using OxygenTaken = MassSpread;

/// Return a rate of uptake through wood, moved to another barrel: in proportion to its surface per
/// volume, against the thickness of its staves.
///
/// Units     `rate` in any unit per volume and time, such as mg/(L yr); surface per volume in 1/m.
/// Range     all above 0; rate 0 or more.
/// Errors    NotFinite; OutOfRange.
[[nodiscard]] Result<double> scaledOxygenRate(double rate, double fromSurfacePerVolume,
                                              Length fromStave, double toSurfacePerVolume,
                                              Length toStave);

/// Return what passes through the wood of a used barrel. It is a matter of surface, so a barrel
/// that is half full takes as much.
///
/// Range     inner 0.01 to 100 m2; stave 3 to 100 mm; time 0 to 100 years.
/// Errors    NotFinite; OutOfRange.
/// Source    8 mg/(L yr), 4 to 16, for a used 53 gallon barrel: memory. A new one of 225 L was
///           measured at 11.4: Junqua, Zeng and Pons, OENO One 55(3) (2021).
[[nodiscard]] Result<OxygenTaken> throughWood(Area inner, Length stave, Duration time);

/// How beer is drawn.
enum class DrawMethod : std::uint8_t {
    SampleHole,  ///< a nail in the head; the bung stays shut and the beer runs against a vacuum
    Valve,       ///< at the head, with the bung loosened
    Bunghole,    ///< from above, with the bung out
};

/// Return what a draw lets in: air in place of the beer (none to all through a sample hole, half to
/// all through a valve, all from above), and from above a part of the head space too, as opened().
///
/// Range     volumes 0 to 1e3 m3; air 0 to 50 °C, dry and of 1 atm.
/// Errors    NotFinite; OutOfRange.
/// Source    common practice; no measurement.
[[nodiscard]] Result<OxygenTaken> drawn(DrawMethod method, Volume beer, Volume headSpace,
                                        Temperature air = celsius(20));

/// Return what an opening of the bung lets in: 10 to 30 % of the head space becomes air.
///
/// Range     headSpace 0 to 1e3 m3; air as drawn().
/// Errors    NotFinite; OutOfRange.
/// Source    memory.
[[nodiscard]] Result<OxygenTaken> opened(Volume headSpace, Temperature air = celsius(20));

/// What is done with a whole volume of beer.
enum class Handling : std::uint8_t {
    Transfer,       ///< 3 to 5 mg/L
    TransferBelow,  ///< filled from the bottom, with care: 0.9 to 1.1 mg/L
    ToppingUp,      ///< 0.3 mg/L of all the beer in the barrel
};

/// Return what beer takes up when it is handled.
///
/// Range     beer 0 to 1e3 m3.
/// Errors    NotFinite; OutOfRange.
/// Source    figures from wine at 15 °C, as handbooks quote them; the ends 0.2 and
///           0.5 beside 0.3 are ours.
[[nodiscard]] Result<OxygenTaken> handled(Handling handling, Volume beer);

/// Return the sum of a ledger. Low ends and high ends are added as they are, as if all erred to one
/// side: too wide rather than too narrow.
[[nodiscard]] OxygenTaken total(std::span<const OxygenTaken> ledger) noexcept;

}  // namespace spile::wood
