// What is said of a bench's glasses: the second part of bench_glasses_view_model.cpp.
#include "qml/viewmodels/bench_glasses_view_model.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

QString nameOf(const cellar::BenchPortion& portion) { return QString::fromStdString(portion.name); }

std::vector<double> amountsOf(const cellar::BenchGlass& glass)
{
    std::vector<double> amounts;
    for (const cellar::BenchPortion& portion : glass.portions) {
        amounts.push_back(portion.volume.si());
    }
    return amounts;
}

}  // namespace

QString BenchGlassesViewModel::letterOf(int place) { return QString(QChar(u'A' + place)); }

QString BenchGlassesViewModel::glassName(int number) const { return tr("Glass %1").arg(number); }

QString BenchGlassesViewModel::title() const
{
    return bench_.name.empty() ? tr("Bench") : QString::fromStdString(bench_.name);
}

QString BenchGlassesViewModel::mixing() const
{
    return tr("Glass %1 of %2").arg(mixing_).arg(bench_.poured.size());
}

void BenchGlassesViewModel::showMixing()
{
    const cellar::BenchGlass* glass = bench_.glassOf(mixing_);
    if (glass == nullptr) {
        recipe_.replace({});
        return;
    }
    const plan::Recipe recipe = plan::recipeOf(amountsOf(*glass));
    ticked_.resize(recipe.steps.size(), false);
    rounding_ = recipe.rounding;
    std::vector<BenchItem> items;
    for (std::size_t i = 0; i < recipe.steps.size(); ++i) {
        const cellar::BenchPortion& portion = glass->portions[recipe.steps[i].part];
        items.push_back(
            {QString::number(mixing_) + u':' + QString::number(i),
             tr("%1 mL of %2")
                 .arg(context_.formats.locale.toString(recipe.steps[i].millilitres, 'f', 1),
                      nameOf(portion)),
             {},
             {},
             ticked_[i]});
    }
    recipe_.replace(std::move(items));
}

QString BenchGlassesViewModel::roundingText() const
{
    constexpr double perCent = 100;
    return rounding_ > plan::roundingTold
               ? tr("Rounded to half a millilitre: one part is off by %1 % of itself.")
                     .arg(context_.formats.locale.toString(rounding_ * perCent, 'f', 0))
               : QString();
}

void BenchGlassesViewModel::showTasters()
{
    std::vector<BenchItem> items;
    for (const cellar::NamedRow& person : people_.people()) {
        const int tasted = bench_.tastedBy(person.subject);
        const bool done = bench_.areScoresShownTo(person.subject);
        items.push_back({textOf(person.subject),
                         QString::fromStdString(person.name),
                         done ? tr("has scored all; sees the scores")
                         : tasted == 0
                             ? tr("has scored none yet")
                             : tr("%1 of %2 scored").arg(tasted).arg(bench_.poured.size()),
                         {},
                         done});
    }
    tasters_.replace(std::move(items));
}

QString BenchGlassesViewModel::taster() const
{
    return taster_ ? people_.nameOf(*taster_) : QString();
}

void BenchGlassesViewModel::showSetOut()
{
    std::vector<BenchItem> items;
    const std::vector<int> numbers = order();
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        items.push_back(
            {QString::number(i), letterOf(static_cast<int>(i)), glassName(numbers[i]), {}});
    }
    setOut_.replace(std::move(items));
}

QString BenchGlassesViewModel::letter() const
{
    const std::vector<int> numbers = order();
    const auto at = std::find(numbers.begin(), numbers.end(), nextNumber());
    return at == numbers.end() ? QString() : letterOf(static_cast<int>(at - numbers.begin()));
}

QString BenchGlassesViewModel::asked() const
{
    return stage_ != Scoring ? QString()
           : isLastAsked()   ? tr("How do you like it?")
                             : capitalised(word(attributes_[static_cast<std::size_t>(asking_)]));
}

QString BenchGlassesViewModel::progress() const
{
    return tr("Glass %1: %2 of %3", "a letter; which question")
        .arg(letter())
        .arg(asking_ + 1)
        .arg(attributes_.size() + 1);
}

QList<QString> BenchGlassesViewModel::ladderWords() const
{
    return isLastAsked() ? QList<QString>{tr("love it"), tr("like it"), tr("it is fine"),
                                          tr("do not like it"), tr("would pour it out")}
                         : QList<QString>{tr("dominant"), tr("strong"), tr("clear"), tr("slight"),
                                          tr("none")};
}

// A line for each taster: what they scored.
QString BenchGlassesViewModel::scoresOf(const cellar::BenchGlass& glass) const
{
    QStringList lines;
    for (const cellar::GlassTaste& taste : glass.tastes) {
        QStringList scores;
        for (const auto& [attribute, score] : taste.scores) {
            scores << (score ? tr("%1 %2", "an attribute, a score").arg(word(attribute)).arg(*score)
                             : tr("%1 not judged").arg(word(attribute)));
        }
        if (taste.liking) {
            scores << tr("liking %1").arg(*taste.liking);
        }
        lines << tr("%1: %2", "who, scores")
                     .arg(QString::fromStdString(taste.name), scores.join(QStringLiteral(", ")));
    }
    return lines.isEmpty() ? tr("Nobody has scored it.") : lines.join(u'\n');
}

void BenchGlassesViewModel::showScores()
{
    if (!taster_ || !bench_.areScoresShownTo(*taster_)) {
        scores_.replace({});
        return;
    }
    const std::vector<int> numbers = order();
    std::vector<BenchItem> items;
    for (const cellar::BenchGlass& glass : bench_.poured) {
        QStringList contents;
        const plan::Recipe recipe = plan::recipeOf(amountsOf(glass));
        for (const plan::RecipeStep& step : recipe.steps) {
            contents << tr("%1 mL of %2")
                            .arg(context_.formats.locale.toString(step.millilitres, 'f', 1),
                                 nameOf(glass.portions[step.part]));
        }
        const auto at = std::find(numbers.begin(), numbers.end(), glass.number);
        items.push_back(
            {QString::number(glass.number),
             tr("%1, your %2", "a glass, its letter")
                 .arg(glassName(glass.number), letterOf(static_cast<int>(at - numbers.begin()))),
             contents.join(QStringLiteral(", ")) + u'\n' + scoresOf(glass),
             {},
             glass.number == chosen_});
    }
    scores_.replace(std::move(items));
}

QString BenchGlassesViewModel::chosenName() const
{
    return chosen_ > 0 ? glassName(chosen_) : QString();
}

QString BenchGlassesViewModel::whyNot() const
{
    return chosen_ == 0 ? tr("Choose the glass that goes into the tank.")
           : !cold_     ? tr("Not before it was tasted cold: cold beer hides sweetness and smell.")
           : !carbonated_
               ? tr("Not before it was tasted carbonated: carbonic acid sharpens and thins it.")
               : QString();
}

void BenchGlassesViewModel::showTank(const std::vector<plan::TankPart>& parts)
{
    std::vector<BenchItem> items;
    for (const plan::TankPart& part : parts) {
        const QString volume = context_.formats.volume(part.portion.volume);
        items.push_back({textOf(part.portion.barrel), nameOf(part.portion),
                         part.whole() ? tr("whole: about %1").arg(volume)
                         : part.held
                             ? tr("%1 of about %2").arg(volume, context_.formats.volume(*part.held))
                             : volume,
                         !part.filled       ? tr("It is empty by now.")
                         : part.tooLittle() ? tr("It does not hold that much any more.")
                                            : QString()});
    }
    tank_.replace(std::move(items));
}

QString BenchGlassesViewModel::tankText() const
{
    const cellar::BenchGlass* glass =
        bench_.choice ? bench_.glassOf(bench_.choice->glass) : nullptr;
    return glass == nullptr
               ? QString()
               : tr("%1 was accepted on %2. Together about %3.")
                     .arg(glassName(glass->number), context_.formats.date(bench_.choice->at),
                          context_.formats.volume(glass->volume()));
}

}  // namespace spile::viewmodels
