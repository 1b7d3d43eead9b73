// Source: ISO/IEC 7064:2003, hybrid system MOD 37,36, by the worked example that the GRid standard
// (IFPI, Global Release Identifier) publishes for it: A1-2425G-ABC1234002-M; from memory.
#include "core/scan/barrel_code.hpp"

#include <gtest/gtest.h>

namespace spile::scan {

TEST(CheckCharacter, MatchesTheExampleOfTheGlobalReleaseIdentifier)
{
    EXPECT_EQ(checkCharacter("A12425GABC1234002"), 'M');
}

}  // namespace spile::scan
