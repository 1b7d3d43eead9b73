#include "core/panel/attribute_reading.hpp"

#include "core/panel/components.hpp"
#include "core/panel/least_squares.hpp"
#include "core/panel/taster_records.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>
#include <utility>

namespace spile::panel {

// Fewer say nothing of how beers differ: common practice, no source.
static constexpr std::size_t sharedBeersNeeded = 5;
// The likelihood ratio of a variance at its bound that chance passes once in 20 times.
static constexpr double beyondChance = 2.71;

namespace {

double square(double x) { return x * x; }

// A line through the months: where the beers of a time lay.
struct Trend {
    double mean = 0, perMonth = 0, centre = 0;
    double variance = 0;  // of the beers, by it

    [[nodiscard]] double at(double months) const { return mean + perMonth * (months - centre); }
};

// The factors of the panel's components.
constexpr std::size_t byBeer = 0;
constexpr std::size_t byTaster = 1;

class Reader {
public:
    explicit Reader(std::span<const Score> scores);
    AttributeReading run();

private:
    Judgement fitModel();
    void judgePanel();
    void measureTasters();
    void addBiases();
    void addPlainBiases();
    void compareFittedSpreads();
    void useRepeats();
    [[nodiscard]] std::vector<Meeting> meetingsOf(int taster) const;
    [[nodiscard]] double effectOf(int taster) const;
    [[nodiscard]] bool beersDiffer() const { return result_.panel.judgement == Judgement::Judged; }

    AttributeReading result_;
    std::vector<Beer> shared_;
    std::map<int, std::size_t> place_;  // of each taster of shared beers
    std::map<int, RepeatSquares> repeats_;
    std::optional<Components> model_;
};

Reader::Reader(std::span<const Score> scores)
{
    result_.panel.attribute = scores.front().attribute;
    for (const Score& score : scores) {
        TasterOnAttribute& taster = result_.tasters[score.taster];
        taster.attribute = score.attribute;
        ++taster.scores;
    }
    for (Beer& beer : beersOf(scores)) {
        for (const Cell& cell : beer.cells) {
            repeats_[cell.taster].add(cell);
            if (beer.isShared()) {
                place_.emplace(cell.taster, 0);
                ++result_.tasters[cell.taster].beers;
            }
        }
        if (beer.isShared()) {
            shared_.push_back(std::move(beer));
        }
    }
    std::size_t next = 0;
    for (auto& [taster, place] : place_) {
        place = next++;
    }
}

AttributeReading Reader::run()
{
    result_.panel.beers = static_cast<int>(shared_.size());
    result_.panel.tasters = static_cast<int>(place_.size());
    result_.panel.judgement = fitModel();
    if (model_) {
        judgePanel();
        measureTasters();
        addBiases();
        compareFittedSpreads();
    } else if (result_.panel.judgement != Judgement::TooFew) {
        addPlainBiases();
    }
    useRepeats();
    return std::move(result_);
}

Judgement Reader::fitModel()
{
    if (shared_.size() < sharedBeersNeeded) {
        return Judgement::TooFew;
    }
    std::vector<double> y;
    Factor beer{{}, static_cast<int>(shared_.size())};
    Factor taster{{}, static_cast<int>(place_.size())};
    for (std::size_t i = 0; i < shared_.size(); ++i) {
        for (const Cell& cell : shared_[i].cells) {
            y.insert(y.end(), cell.lines.begin(), cell.lines.end());
            beer.level.resize(y.size(), static_cast<int>(i));
            taster.level.resize(y.size(), static_cast<int>(place_[cell.taster]));
        }
    }
    if (place_.size() == y.size()) {
        return Judgement::TooFew;  // no taster came twice
    }
    const auto without = componentsOf(y, {taster});
    if (!without) {
        return Judgement::SamplesDoNotDiffer;  // each gives all beers the same
    }
    auto with = componentsOf(y, {beer, taster});
    if (!with) {
        return Judgement::NothingScatters;
    }
    model_ = *std::move(with);
    const bool differ =
        model_->deviations[byBeer] > 0 && without->criterion - model_->criterion > beyondChance;
    return differ ? Judgement::Judged : Judgement::SamplesDoNotDiffer;
}

void Reader::judgePanel()
{
    const double beer = model_->deviations[byBeer];
    const double taster = model_->deviations[byTaster];
    result_.panel.deviations = {beer, taster, model_->residual};
    if (!beersDiffer()) {
        return;
    }
    double cells = 0;
    for (const Beer& one : shared_) {
        cells += static_cast<double>(one.cells.size());
    }
    const double each = std::round(cells / static_cast<double>(shared_.size()));
    const double rest = square(taster) + square(model_->residual);
    result_.panel.agreement =
        Agreement{square(beer) / (square(beer) + rest), square(beer) / (square(beer) + rest / each),
                  static_cast<int>(each)};
}

double Reader::effectOf(int taster) const { return model_->effects[byTaster][place_.at(taster)]; }

// How the beers themselves moved, by what the others gave them: barrels that all grow stronger are
// no drift of whoever tastes them.
Trend trendOf(const std::vector<Meeting>& meetings, double mean)
{
    Trend trend{mean, 0, 0, 0};
    if (meetings.size() < static_cast<std::size_t>(beersNeeded)) {
        return trend;
    }
    std::vector<double> others;
    std::vector<double> months;
    for (const Meeting& meeting : meetings) {
        others.push_back(meeting.given);
        months.push_back(meeting.months);
    }
    if (const auto fit = straightFit(others, {months})) {
        trend = {fit->mean, fit->slopes[0], fit->centre[0], 0};
        for (const double month : months) {
            trend.variance += square(trend.at(month) - trend.mean);
        }
        trend.variance /= static_cast<double>(months.size());
    }
    return trend;
}

// What is not known of a beer lies between what the others gave it and where beers were then.
void foretell(std::vector<Meeting>& meetings, const Components& model)
{
    const Trend trend = trendOf(meetings, model.mean);
    const double variance = std::max(square(model.deviations[byBeer]) - trend.variance, 0.0);
    for (Meeting& meeting : meetings) {
        const double rest = square(model.residual) / meeting.others;
        const double known = variance / (variance + rest);
        const double usual = trend.at(meeting.months);
        meeting.expected = usual + known * (meeting.given - usual);
        meeting.unsure = variance * (1 - known);
    }
}

std::vector<Meeting> Reader::meetingsOf(int taster) const
{
    std::vector<Meeting> meetings;
    for (const Beer& beer : shared_) {
        const auto count = static_cast<double>(beer.cells.size() - 1);
        double others = 0;
        const Cell* own = nullptr;
        for (const Cell& cell : beer.cells) {
            if (cell.taster == taster) {
                own = &cell;
            } else {
                others += (cell.mean() - effectOf(cell.taster)) / count;
            }
        }
        if (own != nullptr) {
            meetings.push_back({beer.session, beer.months, own->mean(), others, 0, 0, count});
        }
    }
    foretell(meetings, *model_);
    std::stable_sort(meetings.begin(), meetings.end(), [](const Meeting& a, const Meeting& b) {
        return std::tie(a.months, a.session) < std::tie(b.months, b.session);
    });
    return meetings;
}

void Reader::measureTasters()
{
    for (const auto& [taster, place] : place_) {
        measure(meetingsOf(taster), beersDiffer(), result_.tasters[taster]);
    }
}

// The effects of a panel add to nothing, so each is against its mean. Its error is not: the model's
// is against the mean of tasters in general, which is known less.
void Reader::addBiases()
{
    const std::vector<double>& effects = model_->effects[byTaster];
    const std::size_t tasters = effects.size();
    const double share = 1 / static_cast<double>(tasters);
    std::vector<double> withAll(tasters);
    for (std::size_t i = 0; i < tasters; ++i) {
        for (std::size_t j = 0; j < tasters; ++j) {
            withAll[i] += model_->covariance({byTaster, i}, {byTaster, j}) * share;
        }
    }
    const double ofAll = std::accumulate(withAll.begin(), withAll.end(), 0.0) * share;
    for (const auto& [taster, i] : place_) {
        const double own = model_->covariance({byTaster, i}, {byTaster, i});
        const double variance = std::max(own - 2 * withAll[i] + ofAll, 0.0);
        result_.tasters[taster].bias = Measured{effects[i], std::sqrt(variance)};
    }
}

// Where nothing scatters there is no model, but what each gives above the mean of a beer is plain.
void Reader::addPlainBiases()
{
    std::map<int, double> above;
    for (const Beer& beer : shared_) {
        double mean = 0;
        for (const Cell& cell : beer.cells) {
            mean += cell.mean() / static_cast<double>(beer.cells.size());
        }
        for (const Cell& cell : beer.cells) {
            above[cell.taster] += cell.mean() - mean;
        }
    }
    for (const auto& [taster, sum] : above) {
        TasterOnAttribute& one = result_.tasters[taster];
        one.bias = Measured{sum / one.beers, std::sqrt(stepVariance / one.beers)};
    }
}

void setOthers(Spread& spread, double sum, int freedom)
{
    spread.othersFreedom = freedom;
    spread.others = freedom > 0 ? std::sqrt(std::max(sum, 0.0) / freedom) : 0;
}

void Reader::compareFittedSpreads()
{
    const auto squaresOf = [](const Spread& spread) {
        return square(spread.deviation) * spread.freedom;
    };
    double sum = 0;
    int freedom = 0;
    for (const auto& [taster, one] : result_.tasters) {
        sum += one.spread ? squaresOf(*one.spread) : 0;
        freedom += one.spread ? one.spread->freedom : 0;
    }
    for (auto& [taster, one] : result_.tasters) {
        if (one.spread) {
            setOthers(*one.spread, sum - squaresOf(*one.spread), freedom - one.spread->freedom);
        }
    }
}

// Blind repeats tell a taster's own scatter alone; but the others' must be known in the same way.
void Reader::useRepeats()
{
    RepeatSquares all;
    for (const auto& [taster, own] : repeats_) {
        all.sum += own.sum;
        all.freedom += own.freedom;
    }
    if (all.freedom >= repeatsNeeded) {
        result_.panel.repeatability = std::sqrt(all.sum / all.freedom);
    }
    for (const auto& [taster, own] : repeats_) {
        std::optional<Spread>& spread = result_.tasters[taster].spread;
        const int others = all.freedom - own.freedom;
        if (own.freedom >= repeatsNeeded && (others >= repeatsNeeded || !spread)) {
            spread = Spread{std::sqrt(own.sum / own.freedom), own.freedom, 0, 0, true};
            setOthers(*spread, all.sum - own.sum, others);
        }
    }
}

}  // namespace

AttributeReading readAttribute(std::span<const Score> scores) { return Reader(scores).run(); }

}  // namespace spile::panel
