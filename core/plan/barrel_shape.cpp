#include "core/plan/barrel_shape.hpp"

#include "core/vessel/measuring.hpp"
#include "core/vessel/presets.hpp"

namespace spile::plan {

Result<vessel::Barrel> shapeOf(const cellar::BarrelMeasures& measures,
                               const std::optional<Volume>& size)
{
    const std::optional<Volume> full = measures.full ? measures.full : size;
    if (measures.length && measures.bilge && measures.head) {
        const vessel::Barrel measured{vessel::Profile::Parabola, *measures.length, *measures.bilge,
                                      *measures.head, 1.0};
        return measures.full ? vessel::calibrated(measured, *measures.full)
                             : Result<vessel::Barrel>(measured);
    }
    if (!full) {
        return fail(ErrorCode::NotFound, "size_ml", "nothing", "the barrel's size");
    }
    return vessel::similarTo(*full);
}

}  // namespace spile::plan
