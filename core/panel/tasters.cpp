#include "core/panel/tasters.hpp"

#include "core/panel/attribute_reading.hpp"

#include <algorithm>
#include <cmath>
#include <span>
#include <string>
#include <tuple>

namespace spile::panel {

static auto glassOf(const Score& score)
{
    return std::tie(score.attribute, score.session, score.barrel, score.taster, score.repeat);
}

static Result<void> checkScores(const std::vector<Score>& sorted)
{
    for (const Score& score : sorted) {
        if (!std::isfinite(score.line) || !std::isfinite(score.months)) {
            return fail(ErrorCode::NotFinite, "score");
        }
        if (score.line < 0 || score.line > lineLength) {
            return fail(ErrorCode::OutOfRange, "score", std::to_string(score.line), "0 to 10");
        }
    }
    const auto twice =
        std::adjacent_find(sorted.begin(), sorted.end(),
                           [](const Score& a, const Score& b) { return glassOf(a) == glassOf(b); });
    if (twice != sorted.end()) {
        return fail(ErrorCode::Conflict, "score", std::to_string(twice->taster),
                    "one of each taster for a glass");
    }
    return {};
}

Result<PanelReport> panelReportOf(std::vector<Score> scores)
{
    std::sort(scores.begin(), scores.end(),
              [](const Score& a, const Score& b) { return glassOf(a) < glassOf(b); });
    SPILE_TRY(checkScores(scores));

    PanelReport report;
    std::map<int, TasterReport> tasters;
    for (auto first = scores.begin(); first != scores.end();) {
        const auto end = std::find_if(first, scores.end(), [first](const Score& score) {
            return score.attribute != first->attribute;
        });
        AttributeReading reading = readAttribute(std::span<const Score>(first, end));
        report.attributes.push_back(reading.panel);
        for (const auto& [number, found] : reading.tasters) {
            TasterReport& taster = tasters[number];
            taster.taster = number;
            taster.scores += found.scores;
            taster.beers = std::max(taster.beers, found.beers);
            taster.attributes.push_back(found);
        }
        first = end;
    }
    for (auto& [number, taster] : tasters) {
        taster.advice = adviceFor(taster);
        report.tasters.push_back(std::move(taster));
    }
    return report;
}

}  // namespace spile::panel
