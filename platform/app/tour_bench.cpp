// The scenes of the bench: a part of tour.cpp.
#include "platform/app/tour.hpp"

namespace spile::app {

using viewmodels::BenchGlassesViewModel;
using viewmodels::BenchViewModel;
using viewmodels::Navigator;

std::vector<Tour::Scene> Tour::benching()
{
    auto& bench = *app_.bench();
    return {{QStringLiteral("bench"),
             [this, &bench] {
                 app_.navigator()->go(Navigator::Today);
                 app_.openBench();
                 settle();
                 bench.chooseTarget(0);
                 settle();
                 if (!bench.canSearch()) {
                     bench.toggleWindow(0);
                 }
                 bench.togglePart();
                 bench.stepLimit(BenchViewModel::Tank, 0);
                 bench.toggleKept(0);
             }},
            {QStringLiteral("bench-nothing"),
             [this, &bench] {
                 bench.stepLimit(BenchViewModel::StrengthLeast, 0);
                 bench.stepLimit(BenchViewModel::StrengthLeast, 140);
                 bench.search();
                 waitFor([&bench] { return bench.stage() != BenchViewModel::Searching; });
                 settle();
             }},
            {QStringLiteral("bench-answers"),
             [this, &bench] {
                 bench.askAgain();
                 bench.clearLimits();
                 bench.toggleKept(0);
                 bench.search();
                 waitFor([&bench] { return bench.stage() != BenchViewModel::Searching; });
                 settle();
                 bench.pick();
                 bench.showAnswer(1);
                 bench.pick();
             }},
            {QStringLiteral("bench-mixing"), [&bench] { bench.pour(); }}};
}

// Where fewer than two blends were found nothing is mixed, and the answers stay.
std::vector<Tour::Scene> Tour::tastingBench()
{
    auto& glasses = *app_.glasses();
    const auto whileOpen = [this](std::function<void()> what) {
        return [this, what = std::move(what)] {
            if (app_.navigator()->page() == Navigator::BenchGlasses) {
                what();
            }
        };
    };
    return {{QStringLiteral("bench-tasters"), whileOpen([this, &glasses] {
                 while (glasses.stage() == BenchGlassesViewModel::Mixing) {
                     for (int step = 0; step < glasses.recipe()->rowCount(); ++step) {
                         glasses.tick(step);
                     }
                     glasses.nextGlass();
                     settle();
                 }
             })},
            {QStringLiteral("bench-set-out"), whileOpen([&glasses] { glasses.chooseTaster(0); })},
            {QStringLiteral("bench-scoring"), whileOpen([&glasses] {
                 glasses.beginTasting();
                 glasses.choose(6);
             })},
            {QStringLiteral("bench-scores"), whileOpen([this, &glasses] {
                 while (glasses.stage() == BenchGlassesViewModel::Scoring) {
                     glasses.choose(5);
                     glasses.next();
                     settle();
                 }
                 glasses.chooseGlass(0);
                 glasses.toggleCold();
             })},
            {QStringLiteral("bench-tank"), whileOpen([&glasses] {
                 glasses.toggleCarbonated();
                 glasses.accept();
             })}};
}

}  // namespace spile::app
