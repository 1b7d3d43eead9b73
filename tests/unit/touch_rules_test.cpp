#include "qml/components/touch_rules.hpp"

#include <gtest/gtest.h>

namespace spile::components {

constexpr double phone = 64;  // mm

static Contact contact(double began, double ended, double x = 30)
{
    Contact made;
    made.began = began;
    made.ended = ended;
    made.x = x;
    return made;
}

static Refusal judge(const std::vector<Contact>& contacts, std::size_t which = 0,
                     const TouchLimits& limits = dryLimits)
{
    return judgeContact(contacts, which, phone, limits);
}

TEST(Contact, IsOverOnceItEnded)
{
    EXPECT_FALSE(contact(100, -1).isOver());
    EXPECT_TRUE(contact(100, 100).isOver());
}

TEST(JudgeContact, AcceptsATap) { EXPECT_EQ(judge({contact(0, 60)}), Refusal::None); }

TEST(JudgeContact, AcceptsASlowTap) { EXPECT_EQ(judge({contact(0, 3000)}), Refusal::None); }

TEST(JudgeContact, RefusesADrop)
{
    EXPECT_EQ(judge({contact(0, 29)}), Refusal::TooShort);
    EXPECT_EQ(judge({contact(0, 30)}), Refusal::None);
}

TEST(JudgeContact, AsksForMoreOnAWetScreen)
{
    EXPECT_EQ(judge({contact(0, 49)}, 0, wetLimits), Refusal::TooShort);
    EXPECT_EQ(judge({contact(0, 50)}, 0, wetLimits), Refusal::None);
}

TEST(JudgeContact, DoesNotCallShortWhatStillRests)
{
    EXPECT_EQ(judge({contact(0, -1)}), Refusal::None);
}

TEST(JudgeContact, RefusesAllOfASplash)
{
    const std::vector<Contact> splash{contact(0, 60), contact(20, 90), contact(79, 140)};
    EXPECT_EQ(judge(splash, 0), Refusal::Together);
    EXPECT_EQ(judge(splash, 1), Refusal::Together);
    EXPECT_EQ(judge(splash, 2), Refusal::Together);
}

TEST(JudgeContact, AcceptsTapsOneAfterTheOther)
{
    EXPECT_EQ(judge({contact(0, 60), contact(80, 140)}, 0), Refusal::None);
    EXPECT_EQ(judge({contact(0, 60), contact(80, 140)}, 1), Refusal::None);
}

TEST(JudgeContact, LetsAPalmLose)
{
    const std::vector<Contact> palmAndFinger{contact(0, -1), contact(500, 560)};
    EXPECT_EQ(judge(palmAndFinger, 0), Refusal::Outlasted);
    EXPECT_EQ(judge(palmAndFinger, 1), Refusal::None);
}

TEST(JudgeContact, RemembersThatAFingerTappedWhileThePalmRested)
{
    EXPECT_EQ(judge({contact(0, 900), contact(500, 560)}, 0), Refusal::Outlasted);
    EXPECT_EQ(judge({contact(0, 400), contact(500, 560)}, 0), Refusal::None);
}

TEST(JudgeContact, RefusesTheGripAtEitherSide)
{
    EXPECT_EQ(judge({contact(0, 60, 1.9)}), Refusal::AtTheSide);
    EXPECT_EQ(judge({contact(0, 60, 2.0)}), Refusal::None);
    EXPECT_EQ(judge({contact(0, 60, phone - 2.0)}), Refusal::None);
    EXPECT_EQ(judge({contact(0, 60, phone - 1.9)}), Refusal::AtTheSide);
}

TEST(JudgeContact, RefusesWhatIsAsWideAsAPalm)
{
    Contact wide = contact(0, 60);
    wide.widest = 22;
    EXPECT_EQ(judge({wide}), Refusal::None);
    wide.widest = 22.1;
    EXPECT_EQ(judge({wide}), Refusal::TooWide);
}

TEST(Wetness, NeedsThreeRefusalsInTwoSeconds)
{
    Wetness wetness;
    wetness.refused(0);
    wetness.refused(1000);
    EXPECT_FALSE(wetness.isWet());
    wetness.refused(2001);  // the first is forgotten
    EXPECT_FALSE(wetness.isWet());
    wetness.refused(2900);
    EXPECT_TRUE(wetness.isWet());
}

TEST(Wetness, StaysUntilSomebodyWipes)
{
    Wetness wetness;
    for (const double time : {0, 1, 2, 90000}) {
        wetness.refused(time);
    }
    EXPECT_TRUE(wetness.isWet());
    wetness.dry();
    EXPECT_FALSE(wetness.isWet());
    wetness.refused(90001);
    EXPECT_FALSE(wetness.isWet());
}

}  // namespace spile::components
