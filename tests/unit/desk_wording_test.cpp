// What the desk says, and how it ends, where that takes a cellar too large to be made in a test.
#include "platform/desk/wording.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::desk {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

TEST(DeskWording, ABackupWithoutSomePhotosIsNoSuccess)
{
    EXPECT_EQ(exitOfHandingOut(1, true), Refused);
    EXPECT_EQ(exitOfHandingOut(0, true), Done);
    EXPECT_EQ(exitOfHandingOut(1, false), Done) << "the receiver asks for it";
    EXPECT_THAT(photosLeftText(1, true), AllOf(HasSubstr("not whole"), HasSubstr("1 photo "),
                                               HasSubstr("`export`"), HasSubstr("phones")));
}

TEST(DeskWording, ADayFileWithoutSomePhotosSaysHowTheyCome)
{
    EXPECT_THAT(photosLeftText(1200, false),
                AllOf(HasSubstr("1200 photos "), HasSubstr("--for"), Not(HasSubstr("backup"))));
}

}  // namespace spile::desk
