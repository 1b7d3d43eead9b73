#include "core/labels/pdf_file.hpp"

#include <array>

namespace spile::labels {

namespace {

// Take one character off the front of well-formed UTF-8.
std::uint32_t takeCharacter(std::string_view& text)
{
    const auto byte = [&text](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const std::uint32_t first = byte(0);
    const std::size_t length = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    std::uint32_t character = length == 1 ? first : first & (0x7FU >> length);
    for (std::size_t i = 1; i < length; ++i) {
        character = character << 6 | (byte(i) & 0x3FU);
    }
    text.remove_prefix(length);
    return character;
}

}  // namespace

// The bytes above 127 tell programs that copy files that this one is not text.
PdfFile::PdfFile() : text_("%PDF-1.6\n%\xE2\xE3\xCF\xD3\n") {}

int PdfFile::reserve()
{
    places_.push_back(0);
    return static_cast<int>(places_.size());
}

void PdfFile::write(int number, std::string_view object)
{
    places_[static_cast<std::size_t>(number - 1)] = text_.size();
    text_ += std::to_string(number) + " 0 obj\n";
    text_ += object;
    text_ += "\nendobj\n";
}

void PdfFile::writeStream(int number, std::string_view entries, std::string_view content)
{
    std::string object = "<< /Length " + std::to_string(content.size());
    object.append(" ").append(entries).append(" >>\nstream\n").append(content);
    write(number, object + "\nendstream");
}

Bytes PdfFile::finish(int catalog, int info)
{
    const std::size_t table = text_.size();
    text_ += "xref\n0 " + std::to_string(places_.size() + 1) + "\n0000000000 65535 f \n";
    for (const std::size_t place : places_) {
        const std::string digits = std::to_string(place);
        text_ += std::string(10 - digits.size(), '0') + digits + " 00000 n \n";
    }
    text_ += "trailer\n<< /Size " + std::to_string(places_.size() + 1) + " /Root " +
             reference(catalog) + " /Info " + reference(info) + " >>\nstartxref\n" +
             std::to_string(table) + "\n%%EOF\n";
    return {text_.begin(), text_.end()};
}

std::string reference(int number) { return std::to_string(number) + " 0 R"; }

std::string hex4(std::uint32_t value)
{
    const std::array<std::uint8_t, 2> bytes{static_cast<std::uint8_t>(value >> 8),
                                            static_cast<std::uint8_t>(value)};
    return toHex(bytes);
}

std::string utf16Hex(std::string_view text)
{
    if (!isUtf8(text)) {
        return "fffd";
    }
    std::string hex;
    while (!text.empty()) {
        const std::uint32_t character = takeCharacter(text);
        if (character < 0x10000) {
            hex += hex4(character);
        } else {
            hex += hex4(0xD800 + ((character - 0x10000) >> 10));
            hex += hex4(0xDC00 + ((character - 0x10000) & 0x3FF));
        }
    }
    return hex;
}

}  // namespace spile::labels
