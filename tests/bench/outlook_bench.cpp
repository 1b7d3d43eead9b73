// The forecasts of a whole cellar, beside one evaluation of the normal distribution in the same
// run.
#include "core/outlook/next_tasting.hpp"
#include "core/outlook/normal.hpp"
#include "core/outlook/shared_tasters.hpp"
#include "tests/bench/counted.hpp"
#include "tests/support/simulated_barrels.hpp"

#include <ctime>

namespace spile::bench {

namespace {

constexpr int barrels = 500;
constexpr int attributes = 10;
constexpr int sittings = 12;
constexpr double weekMonths = 12.0 / 52;
constexpr std::size_t weeks = 105;  // 24 months

// Seconds of this process on a core: what else the machine does counts for little.
template <class Work>
void addProcessor(Times& times, Work work)
{
    const std::clock_t start = std::clock();
    work();
    times.addSeconds(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
}

double kept = 0;  // what is computed is used, else it would not be

// `together`: how many taste at a sitting, of `tasters` who take turns.
outlook::CourseData turns(int barrel, int tasters, int together, test::Draws& draws)
{
    const test::TrueCourse course = test::drawFromPrior(outlook::CoursePrior{}, draws);
    outlook::CourseData data;
    for (int sitting = 0; sitting < sittings; ++sitting) {
        const double age = 2 * sitting;
        for (int i = 0; i < together; ++i) {
            const int taster = (barrel + sitting + i) % tasters;
            data.scores.push_back({age, sitting, taster, course(age) + draws.normal(0, 1), false});
        }
    }
    return data;
}

void line(const char* name, double seconds, double baseline, const char* goal)
{
    std::printf("  %-48s %9.4f s  ratio %8.3g  goal %s\n", name, seconds, seconds / baseline, goal);
}

double oneNormal()
{
    constexpr int calls = 1'000'000;
    Times times;
    addProcessor(times, [] {
        for (int i = 0; i < calls; ++i) {
            kept += outlook::normalBelow(-2 + 4e-6 * i);
        }
    });
    return times.median() / calls;
}

void onePass()
{
    test::Draws draws(1);
    std::vector<outlook::CourseData> all;
    all.reserve(static_cast<std::size_t>(barrels) * attributes);
    for (int i = 0; i < barrels * attributes; ++i) {
        all.push_back(turns(i, 4, 1, draws));
    }
    const outlook::CourseModel model = test::modelFor(4);
    const double before = oneNormal();
    Times times;
    addProcessor(times, [&] {
        for (const outlook::CourseData& data : all) {
            kept += outlook::Course(model, data).logEvidence();
        }
    });
    line("500 barrels x 10 attributes x 12 tastings", times.median(), before, "1 s");
}

// How often a fit asks for memory must not depend on how many parts it has.
void allocationsOfAFit()
{
    test::Draws draws(2);
    const outlook::CourseData data = turns(0, 4, 1, draws);
    outlook::CourseModel model = test::modelFor(4);
    const auto count = [&] {
        const long before = allocations;
        const outlook::Course course(model, data);
        const long counted = allocations - before;
        kept += course.logEvidence();
        return std::pair{counted, course.parts()};
    };
    const auto [few, fewParts] = count();
    model.grid.noisePoints *= 10;
    const auto [many, manyParts] = count();
    std::printf("  %-48s %10ld  of %zu parts; %ld of %zu parts: %ld more, goal 0\n",
                "allocations of a fit", few, fewParts, many, manyParts, many - few);
    const outlook::Course course(test::modelFor(4), data);
    outlook::Mixture level = course.levelAt(0);
    const long before = allocations;
    for (std::size_t week = 0; week < weeks; ++week) {
        course.levelAt(weekMonths * static_cast<double>(week), level);
        kept += level.within(4, 6);
    }
    std::printf("  %-48s %10ld  goal 0\n", "allocations of 105 weeks of chances",
                allocations - before);
}

void oneBarrel()
{
    test::Draws draws(3);
    std::vector<outlook::CourseData> all;
    all.reserve(attributes);
    for (int i = 0; i < attributes; ++i) {
        all.push_back(turns(i, 4, 1, draws));
    }
    const outlook::CourseModel model = test::modelFor(4);
    const double before = oneNormal();
    Times times;
    for (int repeat = 0; repeat < 30; ++repeat) {
        addProcessor(times, [&] {
            std::vector<outlook::Foreseen> foreseen(attributes);
            outlook::Mixture level;
            for (std::size_t a = 0; a < attributes; ++a) {
                const outlook::Course course(model, all[a]);
                foreseen[a].window = {3, 7};
                foreseen[a].sittingVariance = 1.25 * course.noiseVariance();
                foreseen[a].resize(weeks);
                for (std::size_t week = 0; week < weeks; ++week) {
                    course.levelAt(sittings * 2 + weekMonths * static_cast<double>(week), level);
                    foreseen[a].set(week, level);
                }
            }
            kept += static_cast<double>(outlook::decide(foreseen, {}).week);
        });
    }
    line("a barrel after a new score, weekly for 24 months", times.median(), before, "0.020 s");
}

void wholeCellar()
{
    constexpr int tasters = 12;
    constexpr int sweeps = 4;
    test::Draws draws(4);
    outlook::SharedSetting setting;
    setting.wrongs.chance = 0.03;
    setting.scatter.assign(tasters, 1);
    setting.panel.assign(tasters, 1.0 / tasters);
    std::vector<std::vector<outlook::SharedBarrel>> cellar(attributes);
    for (auto& attribute : cellar) {
        for (int i = 0; i < barrels; ++i) {
            // Four of the twelve know a barrel.
            outlook::SharedBarrel barrel{{}, turns(i, 4, 1, draws)};
            for (outlook::Scored& score : barrel.data.scores) {
                score.taster = (score.taster + 4 * (i % 3)) % tasters;
            }
            attribute.push_back(std::move(barrel));
        }
    }
    const double before = oneNormal();
    Times times;
    addProcessor(times, [&] {
        for (const auto& attribute : cellar) {
            outlook::SharedTasters shared(setting);
            if (!shared.learn(attribute, sweeps, Job())) {
                throw std::runtime_error("stopped");
            }
            kept += shared.bias(0).mean;
        }
    });
    line("the whole cellar, 12 tasters, doubts, 4 sweeps", times.median(), before, "15 s");
}

void bench()
{
    title("outlook: fits of courses (processor time on one core)");
    onePass();
    allocationsOfAFit();
    oneBarrel();
    wholeCellar();
    std::printf("  (%g)\n", kept);
}

}  // namespace

}  // namespace spile::bench

int main() { return spile::bench::guarded(spile::bench::bench); }
