#include "platform/app/core_texts.hpp"

#include "core/plan/asks.hpp"
#include "core/plan/calculators/calculator.hpp"
#include "core/plan/sheet.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <vector>

namespace spile::app {

namespace {

// The lines of one array, each text once, in the order they come.
class Texts {
public:
    void add(const char* context, std::string_view text)
    {
        if (text.empty()) {
            return;
        }
        std::string line = std::string("    QT_TRANSLATE_NOOP(\"") + context + "\", \"";
        for (const char c : text) {
            line += c == '"' || c == '\\' ? std::string("\\") + c : std::string(1, c);
        }
        line += "\"),\n";
        if (std::find(lines_.begin(), lines_.end(), line) == lines_.end()) {
            lines_.push_back(std::move(line));
        }
    }
    [[nodiscard]] std::string text() const
    {
        std::string all =
            "// Made by spile_texts, for lupdate alone: never compiled. See core_texts.hpp.\n"
            "const char* const texts[] = {\n";
        for (const std::string& line : lines_) {
            all += line;
        }
        return all + "};\n";
    }

private:
    std::vector<std::string> lines_;
};

Result<std::string> contentOf(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    std::stringstream content;
    content << in.rdbuf();
    return in ? Result<std::string>(content.str())
              : Result<std::string>(fail(ErrorCode::Storage, "sheet", file.string()));
}

void addSheet(Texts& texts, const plan::Sheet& sheet)
{
    constexpr const char* context = "Sheets";
    texts.add(context, sheet.title);
    for (const plan::Step& step : sheet.steps) {
        texts.add(context, step.say);
        texts.add(context, step.hint);
        texts.add(context, step.close);
        for (const plan::Tick& tick : step.ticks) {
            texts.add(context, tick.words);
        }
    }
}

Result<void> addSheets(Texts& texts, const std::filesystem::path& folder)
{
    std::vector<std::filesystem::path> files;
    for (const auto& file : std::filesystem::directory_iterator(folder)) {
        files.push_back(file.path());
    }
    std::sort(files.begin(), files.end());
    for (const auto& file : files) {
        SPILE_ASSIGN(content, contentOf(file));
        if (file.extension() == ".sheet") {
            SPILE_ASSIGN(sheet, plan::parseSheet(content));
            addSheet(texts, sheet);
        } else if (file.filename() == "labels.txt") {
            SPILE_ASSIGN(labels, plan::parseLabels(content));
            for (const plan::Label& label : labels) {
                texts.add("Sheets", label.words);
            }
        } else if (file.filename() == "cautions.txt") {
            SPILE_ASSIGN(cautions, plan::parseCautions(content));
            for (const plan::Caution& caution : cautions) {
                texts.add("Sheets", caution.words);
            }
        }
    }
    return {};
}

// The words that are chosen from, and the units, are stored: the app translates them as such.
void addAsks(Texts& texts)
{
    constexpr const char* context = "Words";
    for (const plan::AskSpec& ask : plan::allAsks()) {
        for (const std::string_view word : ask.words) {
            texts.add(context, word);
        }
        texts.add(context, ask.metric.unit);
        texts.add(context, ask.us.unit);
    }
}

// A publication keeps its own name; what begins with a small letter is no name: "mass balance".
bool isInWords(std::string_view publication)
{
    return !publication.empty() && publication.front() >= 'a' && publication.front() <= 'z';
}

void addCalculators(Texts& texts)
{
    constexpr const char* context = "Calculators";
    for (const plan::Calculator& calculator : plan::calculators()) {
        texts.add(context, calculator.title);
        texts.add(context, calculator.use);
        texts.add(context, calculator.caution);
        for (const plan::CalculatorInput& input : calculator.inputs) {
            texts.add(context, input.label);
            for (const std::string_view word : input.words) {
                texts.add(context, word);
            }
        }
        for (const plan::AnswerSpec& answer : calculator.answers) {
            texts.add(context, answer.label);
        }
        for (const std::string_view text : calculator.texts) {
            texts.add(context, text);
        }
        for (const plan::FormulaSource& source : calculator.sources) {
            texts.add(context, source.formula);
            if (isInWords(source.publication)) {
                texts.add(context, source.publication);
            }
        }
    }
}

}  // namespace

Result<std::string> coreTexts(const std::string& sheetsFolder)
{
    Texts texts;
    SPILE_TRY(addSheets(texts, sheetsFolder));
    addAsks(texts);
    addCalculators(texts);
    return texts.text();
}

}  // namespace spile::app
