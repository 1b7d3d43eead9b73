#pragma once

#include "core/panel/tasters.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

/// Simulated tasters, whose habits are known, on beers of a simulated cellar.
namespace spile::panel {

struct Habit {
    double bias = 0;
    double gain = 1;
    double driftPerYear = 0;
    double scatter = 0.8;
    double lately = 0;       // in the last session
    double mood = 0;         // how the bias changes from session to session
    int onlyAttribute = -1;  // -1: on all
    int fromSession = 0;
};

struct Cellar {
    int attributes = 4;
    int sessions = 16;
    int barrels = 4;
    int repeats = 1;  // glasses of the first barrel
    double beerDeviation = 2;
    double risePerYear = 0;  // of all beers
    unsigned seed = 1;
};

inline constexpr Habit plain{};

// Where a score falls on the ladder.
inline double stepped(double line)
{
    return std::clamp(std::round(line / pointsPerStep) * pointsPerStep, 0.0, lineLength);
}

inline std::vector<Score> scoresOf(const std::vector<Habit>& habits, const Cellar& cellar)
{
    std::mt19937 random(cellar.seed);
    std::normal_distribution<double> normal;
    std::vector<Score> scores;
    std::mt19937 moods(cellar.seed);
    for (int session = 0; session < cellar.sessions; ++session) {
        const double mood = normal(moods);
        for (int barrel = 0; barrel < cellar.barrels; ++barrel) {
            for (int attribute = 0; attribute < cellar.attributes; ++attribute) {
                const double years = session / 12.0;
                const double since = years - cellar.sessions / 24.0;
                const double above =
                    cellar.beerDeviation * normal(random) + cellar.risePerYear * since;
                for (int taster = 0; taster < static_cast<int>(habits.size()); ++taster) {
                    Habit habit = habits[static_cast<std::size_t>(taster)];
                    if (habit.onlyAttribute >= 0 && habit.onlyAttribute != attribute) {
                        habit = plain;
                    }
                    const double mean = 5 + habit.bias + habit.gain * above + habit.mood * mood +
                                        habit.driftPerYear * since +
                                        (session == cellar.sessions - 1 ? habit.lately : 0);
                    for (int repeat = 0; repeat < (barrel == 0 ? cellar.repeats : 1); ++repeat) {
                        const double line = mean + habit.scatter * normal(random);
                        if (session >= habit.fromSession) {
                            scores.push_back({taster, attribute, session, barrel, repeat,
                                              12 * years, stepped(line)});
                        }
                    }
                }
            }
        }
    }
    return scores;
}

inline PanelReport reportOf(const std::vector<Habit>& habits, const Cellar& cellar = {})
{
    return panelReportOf(scoresOf(habits, cellar)).value();
}

inline Habit with(double Habit::*what, double value)
{
    Habit habit;
    habit.*what = value;
    return habit;
}

inline std::vector<AdviceKind> kindsOf(const TasterReport& report)
{
    std::vector<AdviceKind> kinds;
    for (const Advice& advice : report.advice) {
        kinds.push_back(advice.kind);
    }
    return kinds;
}

}  // namespace spile::panel
