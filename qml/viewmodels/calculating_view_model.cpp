#include "qml/viewmodels/calculating_view_model.hpp"

#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/calculating_facts.hpp"
#include "qml/viewmodels/calculating_texts.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

CalculatingViewModel::CalculatingViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.settings, &Settings::changed, this, &CalculatingViewModel::show);
}

void CalculatingViewModel::begin(const cellar::BarrelRow& barrel)
{
    calculator_ = nullptr;
    filled_.clear();
    facts_.reset();
    barrel_ = barrel.barrel;
    barrelName_ = barrel_.isZero() ? QString() : nameOf(barrel);
    last_.reset();
    show();
    if (!barrel_.isZero()) {
        readBarrel(barrel_);
    }
}

void CalculatingViewModel::readBarrel(const SubjectId& barrel)
{
    context_.workers.look(
        this,
        [barrel, now = context_.formats.now()](ledger::Database& database) {
            return plan::readFacts(database, barrel, now);
        },
        [this, barrel](Result<plan::WorkFacts> facts) {
            if (!facts || barrel != barrel_) {
                return;  // then the usual values stand
            }
            facts_ = std::move(*facts);
            for (auto& [name, filled] : filled_) {
                if (!filled.touched) {
                    filled.given = {};
                }
            }
            if (calculator_ != nullptr) {
                fill(filled_[std::string(calculator_->name)]);
                show();
                calculate();
            }
        });
}

QStringList CalculatingViewModel::titles()
{
    QStringList all;
    for (const plan::Calculator& one : plan::calculators()) {
        all << calculatorText(one.title);
    }
    return all;
}

QStringList CalculatingViewModel::uses()
{
    QStringList all;
    for (const plan::Calculator& one : plan::calculators()) {
        all << calculatorText(one.use);
    }
    return all;
}

int CalculatingViewModel::current() const
{
    return calculator_ == nullptr ? -1 : static_cast<int>(calculator_ - plan::calculators().data());
}

QString CalculatingViewModel::title() const
{
    return calculator_ == nullptr ? QString() : calculatorText(calculator_->title);
}

QString CalculatingViewModel::use() const
{
    return calculator_ == nullptr ? QString() : calculatorText(calculator_->use);
}

QString CalculatingViewModel::caution() const
{
    return calculator_ == nullptr ? QString() : calculatorText(calculator_->caution);
}

QString CalculatingViewModel::mainLabel() const
{
    return answers_.rows().empty() ? QString() : answers_.rows().front().label;
}

QString CalculatingViewModel::mainValue() const
{
    return answers_.rows().empty() ? QString() : answers_.rows().front().value;
}

QStringList CalculatingViewModel::sources() const
{
    QStringList all;
    if (calculator_ != nullptr) {
        for (const plan::FormulaSource& source : calculator_->sources) {
            all << tr("%1: %2", "a formula and its publication")
                       .arg(capitalised(calculatorText(source.formula)),
                            calculatorText(source.publication));
        }
    }
    return all;
}

QString CalculatingViewModel::handbook() const
{
    return calculator_ == nullptr ? QString()
                                  : QString::fromStdString(std::string(calculator_->handbook));
}

void CalculatingViewModel::choose(int index)
{
    const auto all = plan::calculators();
    if (index < 0 || index >= static_cast<int>(all.size())) {
        return;
    }
    calculator_ = &all[static_cast<std::size_t>(index)];
    const auto [found, isNew] = filled_.try_emplace(std::string(calculator_->name));
    if (isNew) {
        fill(found->second);
    }
    last_.reset();
    show();
    calculate();
}

void CalculatingViewModel::choose(const QString& name)
{
    if (const plan::Calculator* found = plan::findCalculator(name.toStdString())) {
        choose(static_cast<int>(found - plan::calculators().data()));
    }
}

void CalculatingViewModel::leave()
{
    calculator_ = nullptr;
    last_.reset();
    show();
}

plan::Given& CalculatingViewModel::given() { return filled_[std::string(calculator_->name)].given; }

void CalculatingViewModel::fill(Filled& filled) const
{
    if (filled.touched) {
        return;
    }
    giveRemembered(filled.given, *calculator_, context_.settings);
    if (facts_) {
        giveFacts(filled.given, *calculator_, *facts_);
    }
}

void CalculatingViewModel::stepInput(const QString& name, int count)
{
    const plan::CalculatorInput* input =
        calculator_ == nullptr ? nullptr : plan::findInput(*calculator_, name.toStdString());
    if (input == nullptr || !input->words.empty()) {
        return;
    }
    const auto given = this->given().number(input->name);
    const auto known = given ? given : input->usual;
    this->given().set(
        input->name, known ? stepped(*known, count, *input, scaleOf(*input, context_.formats.units))
                           : beginningOf(*input));
    filled_[std::string(calculator_->name)].touched = true;
    show();
    calculate();
}

void CalculatingViewModel::chooseWord(const QString& name, int index)
{
    const plan::CalculatorInput* input =
        calculator_ == nullptr ? nullptr : plan::findInput(*calculator_, name.toStdString());
    if (input == nullptr || index < 0 || index >= static_cast<int>(input->words.size())) {
        return;
    }
    given().setWord(input->name, std::string(input->words[static_cast<std::size_t>(index)]));
    filled_[std::string(calculator_->name)].touched = true;
    show();
    calculate();
}

void CalculatingViewModel::forget(const QString& name)
{
    if (calculator_ == nullptr) {
        return;
    }
    given().clear(name.toStdString());
    filled_[std::string(calculator_->name)].touched = true;
    show();
    calculate();
}

// Beside the UI thread, since years of losses take milliseconds; of what is asked meanwhile only
// the last is answered.
void CalculatingViewModel::calculate()
{
    if (std::exchange(running_, true)) {
        again_ = true;
        return;
    }
    context_.workers.aside(
        this,
        [calculator = calculator_, given = given()] {
            return Ran{given, plan::calculate(*calculator, given)};
        },
        [this, calculator = calculator_](Ran ran) {
            running_ = false;
            const bool again = std::exchange(again_, false);
            if (calculator_ == nullptr) {
                return;
            }
            if (again || calculator != calculator_) {
                calculate();
                return;
            }
            last_ = std::move(ran);
            show();
        });
}

AskLine CalculatingViewModel::lineOf(const plan::CalculatorInput& input)
{
    AskLine line;
    line.name = QString::fromStdString(std::string(input.name));
    line.label = calculatorText(input.label);
    if (!input.words.empty()) {
        const auto chosen = std::find(input.words.begin(), input.words.end(),
                                      std::string_view(given().word(input.name)));
        line.kind = AskRows::Words;
        for (const std::string_view one : input.words) {
            line.words << capitalised(calculatorText(one));
        }
        line.choice =
            chosen == input.words.end() ? 0 : static_cast<int>(chosen - input.words.begin());
        return line;
    }
    const InputScale scale = scaleOf(input, context_.formats.units);
    const QLocale& locale = context_.formats.locale;
    const auto given = this->given().number(input.name);
    const auto value = given ? given : input.usual;
    line.kind = AskRows::Number;
    line.unit = scale.unit;
    line.smallStep = locale.toString(scale.step, 'f', scale.decimals);
    const double tenSteps = 10 * scale.step;
    line.bigStep = locale.toString(tenSteps, 'f', std::max(0, scale.decimals - 1));
    line.empty = !value;
    if (value) {
        line.readout = readoutOf(*value, scale, locale);
        line.canLess = *value > input.least;
        line.canMore = *value < input.most;
    }
    if (input.mayBeLeftOut) {
        line.note = tr("May be left out");
    }
    return line;
}

void CalculatingViewModel::show()
{
    std::vector<AskLine> inputs;
    std::vector<FactLine> answers;
    missing_.clear();
    error_.clear();
    if (calculator_ != nullptr) {
        for (const plan::CalculatorInput& input : calculator_->inputs) {
            inputs.push_back(lineOf(input));
        }
        if (last_ && last_->answers) {
            for (const plan::Answer& answer : *last_->answers) {
                answers.push_back({QString::fromStdString(answer.name),
                                   calculatorText(answer.label),
                                   answerText(answer, context_.formats), answer.caution});
            }
        } else if (last_) {
            const Error& problem = last_->answers.error();
            const QString text =
                calculatorErrorText(*calculator_, last_->given, problem, context_.formats);
            (isMissing(*calculator_, last_->given, problem) ? missing_ : error_) = text;
        }
    }
    inputs_.replace(std::move(inputs));
    answers_.replace(std::move(answers));
    emit changed();
}

}  // namespace spile::viewmodels
