#include "tests/architecture/source_tree.hpp"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace spile::architecture {

namespace {

enum class Part { Code, Comment, Text, Character };

// Tells for each character of C++ whether it is code, comment or literal.
class Lexer {
public:
    explicit Lexer(std::string_view text) : text_(text) {}

    [[nodiscard]] std::vector<Part> run()
    {
        while (at_ < text_.size()) {
            step();
        }
        return std::move(parts_);
    }

private:
    void step()
    {
        const std::string_view rest = text_.substr(at_);
        if (rest.starts_with("//")) {
            take(Part::Comment, rest.find('\n'));
        } else if (rest.starts_with("/*")) {
            take(Part::Comment, endAfter(rest, "*/", 2));
        } else if (rest.starts_with("R\"") && !followsWord()) {
            const std::string_view mark = rest.substr(2, rest.find('(') - 2);
            take(Part::Text, endAfter(rest, ')' + std::string(mark) + '"', 2));
        } else if (rest[0] == '"') {
            take(Part::Text, literalEnd(rest, '"'));
        } else if (rest[0] == '\'' && !followsWord()) {
            take(Part::Character, literalEnd(rest, '\''));
        } else {
            take(Part::Code, 1);
        }
    }
    void take(Part part, std::size_t count)
    {
        count = std::min(count, text_.size() - at_);
        parts_.insert(parts_.end(), count, part);
        at_ += count;
    }
    // 1'000 has no literal in it, and fooR"x" would be no raw string.
    [[nodiscard]] bool followsWord() const
    {
        return at_ > 0 && std::isalnum(static_cast<unsigned char>(text_[at_ - 1])) != 0;
    }
    static std::size_t endAfter(std::string_view rest, std::string_view end, std::size_t from)
    {
        const std::size_t found = rest.find(end, from);
        return found == std::string_view::npos ? found : found + end.size();
    }
    static std::size_t literalEnd(std::string_view rest, char quote)
    {
        for (std::size_t i = 1; i < rest.size(); ++i) {
            if (rest[i] == '\\') {
                ++i;
            } else if (rest[i] == quote) {
                return i + 1;
            }
        }
        return rest.size();
    }

    std::string_view text_;
    std::size_t at_ = 0;
    std::vector<Part> parts_;
};

}  // namespace

static std::string blankAllBut(std::string_view text, Part kept)
{
    const std::vector<Part> parts = Lexer(text).run();
    std::string result(text);
    for (std::size_t i = 0; i < result.size(); ++i) {
        if (parts[i] != kept && result[i] != '\n') {
            result[i] = ' ';
        }
    }
    return result;
}

std::string codeOnly(std::string_view text) { return blankAllBut(text, Part::Code); }

std::string stringsOnly(std::string_view text) { return blankAllBut(text, Part::Text); }

std::vector<std::string> linesOf(std::string_view text)
{
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        lines.emplace_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

std::string finding(const SourceFile& file, std::size_t lineIndex, std::string_view what)
{
    return file.path + ':' + std::to_string(lineIndex + 1) + ": " + std::string(what);
}

bool isIn(const SourceFile& file, std::string_view folder)
{
    const std::string_view path = file.path;
    return path.starts_with(folder) && (path.size() == folder.size() || path[folder.size()] == '/');
}

bool isInAny(const SourceFile& file, const std::vector<std::string_view>& folders)
{
    return std::any_of(folders.begin(), folders.end(),
                       [&](std::string_view folder) { return isIn(file, folder); });
}

bool isCpp(const SourceFile& file)
{
    return file.path.ends_with(".cpp") || file.path.ends_with(".hpp");
}

bool isQml(const SourceFile& file) { return file.path.ends_with(".qml"); }

Tree readTree()
{
    namespace fs = std::filesystem;
    const fs::path root(SPILE_SOURCE_DIR);
    Tree tree;
    for (auto entry = fs::recursive_directory_iterator(root);
         entry != fs::recursive_directory_iterator(); ++entry) {
        const std::string path = entry->path().lexically_relative(root).generic_string();
        if (path == ".git" || path == "build" || path == "demo/out") {
            entry.disable_recursion_pending();
        } else if (entry->is_regular_file() && path != "compile_commands.json") {
            std::ifstream file(entry->path(), std::ios::binary);
            tree.push_back({path, std::string(std::istreambuf_iterator<char>(file), {})});
        }
    }
    std::sort(tree.begin(), tree.end(),
              [](const SourceFile& a, const SourceFile& b) { return a.path < b.path; });
    return tree;
}

}  // namespace spile::architecture
