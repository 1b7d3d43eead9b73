#pragma once

#include "core/base/result.hpp"
#include "core/units/parse.hpp"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The trade's calculators, each as data and one function: for the desk, the app's page and the
/// handbook alike. Labels, uses, cautions and texts are English; who shows them translates them.
namespace spile::plan {

/// One number, or one choice of words, that a calculator asks for. All numbers are in SI as in
/// Measurand; a gravity is typed as 1.084 or as 20P and is always a specific gravity inside.
struct CalculatorInput {
    std::string_view name;   ///< "hose-bore": as the desk's option has it
    std::string_view label;  ///< "Bore of the hose"
    Measurand measurand = Measurand::Count;
    std::optional<double> usual = {};  ///< none: it must be given
    double least = 0, most = 0;        ///< both allowed
    std::string_view metricUnit = {};  ///< symbols of unitsOf(measurand)
    std::string_view usUnit = {};
    double metricStep = 0, usStep = 0;             ///< in those units
    std::span<const std::string_view> words = {};  ///< a choice; the first one is the usual one
    bool mayBeLeftOut = false;                     ///< then there is no usual value
};

/// What a calculator may answer with; not each answer comes each time.
struct AnswerSpec {
    std::string_view name;
    std::string_view label;
    Measurand measurand = Measurand::Count;
    std::string_view metricUnit = {};
    std::string_view usUnit = {};
    int digits = 3;  ///< significant ones
};

struct Answer {
    std::string name;
    std::string label;
    Measurand measurand = Measurand::Count;
    double value = 0;                ///< SI
    std::optional<double> low = {};  ///< an 80 % range, where it is an estimate
    std::optional<double> high = {};
    std::string text = {};  ///< in words, instead of the number
    std::string metricUnit = {};
    std::string usUnit = {};
    int digits = 3;
    bool caution = false;  ///< beyond a limit: shown with the sign of a caution
};

struct FormulaSource {
    std::string_view formula;      ///< "density of water and ethanol"
    std::string_view publication;  ///< "OIML R 22 (1975), general formula"; may be common practice
};

/// What was filled in, by the names of the inputs.
class Given {
public:
    void set(std::string_view name, double si) { numbers_.insert_or_assign(std::string(name), si); }
    void setWord(std::string_view name, std::string word)
    {
        words_.insert_or_assign(std::string(name), std::move(word));
    }
    void clear(std::string_view name);

    [[nodiscard]] std::optional<double> number(std::string_view name) const;
    [[nodiscard]] std::string word(std::string_view name) const;  ///< empty if there is none
    [[nodiscard]] bool has(std::string_view name) const;
    [[nodiscard]] std::vector<std::string> names() const;

private:
    std::map<std::string, double, std::less<>> numbers_;
    std::map<std::string, std::string, std::less<>> words_;
};

struct Calculator {
    std::string_view name;   ///< "purge"
    std::string_view title;  ///< "Purging a barrel"
    std::string_view use;    ///< one sentence: what it is for
    std::span<const CalculatorInput> inputs;
    std::span<const AnswerSpec> answers;
    std::span<const std::string_view> texts;  ///< all that an answer may say in words
    std::span<const FormulaSource> sources;
    std::string_view caution;   ///< may be empty
    std::string_view handbook;  ///< file of its page in assets/handbook
    Result<std::vector<Answer>> (*run)(const Given&) = nullptr;  ///< use calculate() instead
};

/// Return all, in the order in which a list shows them. Names are unique.
[[nodiscard]] std::span<const Calculator> calculators();
/// Return the one of that name, or nullptr.
[[nodiscard]] const Calculator* findCalculator(std::string_view name);
[[nodiscard]] const CalculatorInput* findInput(const Calculator& calculator, std::string_view name);

/// Return the SI value of a typed number. A gravity may be degrees Plato: "20P".
///
/// Errors    as parseQuantity(), named after the input; Malformed for a choice of words. The range
///           is calculate()'s.
[[nodiscard]] Result<double> parseInput(const CalculatorInput& input, std::string_view text);

/// Put what was typed for an input, a number or one of its words, into `given`. In words a hyphen
/// may stand for a blank: "sample-hole".
///
/// Errors    as parseInput(); Malformed for another word. `limit` says what would be right.
[[nodiscard]] Result<void> giveTyped(Given& given, const CalculatorInput& input,
                                     std::string_view text);

/// What would be right for an input: "a number with one of L, mL, gal", "1.084 or 20P", "a or b".
[[nodiscard]] std::string expectedOf(const CalculatorInput& input);
/// "0.5 to 100 mm", in the metric or the US unit.
[[nodiscard]] std::string rangeOf(const CalculatorInput& input, bool us = false);

/// Return `given` with the usual values for what is missing.
///
/// Errors    Malformed if a name is not that of an input ("foo"), if an input without a usual value
///           is missing (`value` empty) or a word is none of the choice; NotFinite; OutOfRange with
///           the value and the range in the metric unit. `subject` is the input's name.
[[nodiscard]] Result<Given> filledIn(const Calculator& calculator, const Given& given);

/// Fill in the usual values, check and run.
///
/// Errors    as filledIn(); those of the formulas, whose subject may be a quantity that is not an
///           input; NotFinite, named after the answer, should one not be finite.
[[nodiscard]] Result<std::vector<Answer>> calculate(const Calculator& calculator,
                                                    const Given& given);

}  // namespace spile::plan
