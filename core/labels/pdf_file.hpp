#pragma once

#include "core/base/bytes.hpp"
#include "core/labels/decimal.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

// Internal to core/labels: a PDF file as its numbered objects.
namespace spile::labels {

class PdfFile {
public:
    PdfFile();

    /// Take a number for an object that is written later.
    [[nodiscard]] int reserve();
    /// Write an object under a reserved number; each once.
    void write(int number, std::string_view object);
    /// Write a stream; `entries` are those of its dictionary besides the length.
    void writeStream(int number, std::string_view entries, std::string_view content);
    /// Write what ends the file and return all of it. Requires every reserved number to be written.
    [[nodiscard]] Bytes finish(int catalog, int info);

private:
    std::string text_;
    std::vector<std::size_t> places_;  // of object 1, 2, ...; 0: not written yet
};

/// "12 0 R"
[[nodiscard]] std::string reference(int number);
/// Four hexadecimal digits. Requires less than 65,536.
[[nodiscard]] std::string hex4(std::uint32_t value);
/// UTF-16, big end first, in hexadecimal; `text` is UTF-8, and what is not well-formed becomes
/// U+FFFD.
[[nodiscard]] std::string utf16Hex(std::string_view text);

}  // namespace spile::labels
