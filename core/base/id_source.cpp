#include "core/base/id_source.hpp"

#include <array>

namespace spile::inline base {

SubjectId Uuid7Source::next()
{
    std::array<std::uint8_t, SubjectId::size> uuid{};
    random_.fill(uuid);
    auto ms = static_cast<std::uint64_t>(toMs(clock_.now()));
    for (std::size_t i = 6; i-- > 0;) {
        uuid[i] = static_cast<std::uint8_t>(ms & 0xffU);
        ms >>= 8U;
    }
    uuid[6] = static_cast<std::uint8_t>(0x70U | (uuid[6] & 0x0fU));  // version 7
    uuid[8] = static_cast<std::uint8_t>(0x80U | (uuid[8] & 0x3fU));  // variant 10
    return SubjectId(uuid);
}

}  // namespace spile::inline base
