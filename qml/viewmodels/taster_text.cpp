#include "qml/viewmodels/taster_text.hpp"

#include <cmath>

namespace spile::viewmodels {

namespace {

// From where on agreement is called so. Common practice, no source.
constexpr double goodAgreement = 0.75;
constexpr double fairAgreement = 0.5;

constexpr double sureErrors = 2;

}  // namespace

QString TasterText::advice(const panel::Advice& advice, const QString& attribute,
                           const Formats& formats)
{
    const auto number = [&formats](double value) {
        return formats.locale.toString(std::abs(value), 'f', 1);
    };
    const double value = advice.measured.value;
    const QString steps = number(value / panel::pointsPerStep);
    const QString within = number(sureErrors * advice.measured.error / panel::pointsPerStep);
    switch (advice.kind) {
        case panel::AdviceKind::TooFew:
            return tr("Needs %n more beer(s) tasted together before anything can be said.", "",
                      advice.beers);
        case panel::AdviceKind::Steady:
            return tr("Steady.");
        case panel::AdviceKind::ReadsHigh:
            return tr("Reads about %1 steps high at %2 (sure within %3). Taste beside the others "
                      "and compare.")
                .arg(steps, attribute, within);
        case panel::AdviceKind::ReadsLow:
            return tr("Reads about %1 steps low at %2 (sure within %3). Taste beside the others "
                      "and compare.")
                .arg(steps, attribute, within);
        case panel::AdviceKind::Wide:
            return tr("Scatters about %1 times as much as the others at %2. Taste fewer glasses at "
                      "a time, and agree with a sample on what it means.")
                .arg(number(value), attribute);
        case panel::AdviceKind::NarrowRange:
            return tr("Uses only about %1 % of the range that the others use at %2. Taste the "
                      "weakest and the strongest barrel side by side first, and use the ends.")
                .arg(formats.locale.toString(value * 100, 'f', 0), attribute);
        case panel::AdviceKind::WideRange:
            return tr("Uses about %1 times the range that the others use at %2. Keep the ends for "
                      "the extremes of all barrels.")
                .arg(number(value), attribute);
        case panel::AdviceKind::Drifting:
            return (value > 0 ? tr("Reads about %1 steps higher each year at %2 (sure within %3). "
                                   "Taste an old, known beer again.")
                              : tr("Reads about %1 steps lower each year at %2 (sure within %3). "
                                   "Taste an old, known beer again."))
                .arg(steps, attribute, within);
        case panel::AdviceKind::OutOfLineLately:
            return (value > 0 ? tr("Read about %1 steps higher than before at the latest sitting, "
                                   "at %2 (sure within %3). A cold, a meal, smoke? Taste again.")
                              : tr("Read about %1 steps lower than before at the latest sitting, "
                                   "at %2 (sure within %3). A cold, a meal, smoke? Taste again."))
                .arg(steps, attribute, within);
    }
    return {};
}

QString TasterText::grade(double agreement)
{
    return agreement >= goodAgreement   ? tr("good", "agreement")
           : agreement >= fairAgreement ? tr("fair", "agreement")
                                        : tr("poor", "agreement");
}

QString TasterText::agreement(const panel::PanelOnAttribute& attribute)
{
    switch (attribute.judgement) {
        case panel::Judgement::TooFew:
            return tr("Too few beers were tasted together: nothing can be told yet.");
        case panel::Judgement::SamplesDoNotDiffer:
            return tr("The beers do not differ enough: nothing can be told.");
        case panel::Judgement::NothingScatters:
            return tr("The tasters differ in nothing but their levels: nothing can be told.");
        case panel::Judgement::Judged:
            break;
    }
    if (!attribute.agreement) {
        return {};
    }
    const panel::Agreement& told = *attribute.agreement;
    if (told.tasters < 2) {
        return tr("Agreement: %1 with one taster.").arg(grade(told.one));
    }
    return tr("Agreement: %1 with one taster, %2 with %n taster(s).", "", told.tasters)
        .arg(grade(told.one), grade(told.ofMean));
}

}  // namespace spile::viewmodels
