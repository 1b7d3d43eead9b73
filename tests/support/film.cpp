#include "tests/support/film.hpp"

#include "core/picture/encode.hpp"

#include <stdexcept>
#include <string_view>

namespace spile::support {

namespace {

void append(Bytes& to, std::string_view text) { to.insert(to.end(), text.begin(), text.end()); }

void append32(Bytes& to, std::size_t value)
{
    for (unsigned shift = 0; shift < 32; shift += 8) {
        to.push_back(static_cast<std::uint8_t>(value >> shift & 0xFFU));
    }
}

void append16(Bytes& to, std::size_t value)
{
    to.push_back(static_cast<std::uint8_t>(value & 0xFFU));
    to.push_back(static_cast<std::uint8_t>(value >> 8U & 0xFFU));
}

// A chunk: name, length, content, made even.
Bytes chunk(std::string_view name, const Bytes& content)
{
    Bytes bytes;
    append(bytes, name);
    append32(bytes, content.size());
    bytes.insert(bytes.end(), content.begin(), content.end());
    if (content.size() % 2 == 1) {
        bytes.push_back(0);
    }
    return bytes;
}

// A chunk that holds a kind and then other chunks.
Bytes list(std::string_view name, std::string_view kind, const std::vector<Bytes>& parts)
{
    Bytes content;
    append(content, kind);
    for (const Bytes& part : parts) {
        content.insert(content.end(), part.begin(), part.end());
    }
    return chunk(name, content);
}

struct Facts {
    std::size_t width, height, frames, framesPerSecond, largest;
};

Bytes mainHeader(const Facts& film)
{
    Bytes header;
    append32(header, 1'000'000 / film.framesPerSecond);  // microseconds a frame
    append32(header, film.largest * film.framesPerSecond);
    append32(header, 0);
    append32(header, 0x10);  // has an index
    append32(header, film.frames);
    append32(header, 0);
    append32(header, 1);  // stream
    append32(header, film.largest);
    append32(header, film.width);
    append32(header, film.height);
    header.resize(header.size() + 16);
    return chunk("avih", header);
}

Bytes streamHeader(const Facts& film)
{
    Bytes header;
    append(header, "vidsMJPG");
    header.resize(header.size() + 12);  // flags, priority, language, first frames
    append32(header, 1);                // frames a second, as a fraction
    append32(header, film.framesPerSecond);
    append32(header, 0);
    append32(header, film.frames);
    append32(header, film.largest);
    append32(header, 0xFFFFFFFF);  // quality: not said
    append32(header, 0);
    append16(header, 0);
    append16(header, 0);
    append16(header, film.width);
    append16(header, film.height);
    return chunk("strh", header);
}

Bytes streamFormat(const Facts& film)
{
    Bytes format;
    append32(format, 40);  // of this
    append32(format, film.width);
    append32(format, film.height);
    append16(format, 1);   // plane
    append16(format, 24);  // bits a pixel
    append(format, "MJPG");
    append32(format, film.width * film.height * 3);
    format.resize(format.size() + 16);
    return chunk("strf", format);
}

}  // namespace

Bytes filmOf(const std::vector<picture::Image>& frames, int framesPerSecond)
{
    constexpr int quality = 90;
    Facts film{static_cast<std::size_t>(frames.at(0).width),
               static_cast<std::size_t>(frames.at(0).height), frames.size(),
               static_cast<std::size_t>(framesPerSecond), 0};
    std::vector<Bytes> pictures;
    Bytes index;
    std::size_t at = 4;  // after the list's kind
    for (const picture::Image& frame : frames) {
        auto jpeg = picture::encodeJpeg(frame, quality);
        if (!jpeg) {
            throw std::runtime_error("a frame that cannot be written: " + jpeg.error().subject);
        }
        film.largest = std::max(film.largest, jpeg->size());
        append(index, "00dc");
        append32(index, 0x10);  // can be shown by itself
        append32(index, at);
        append32(index, jpeg->size());
        pictures.push_back(chunk("00dc", *jpeg));
        at += pictures.back().size();
    }
    const Bytes stream = list("LIST", "strl", {streamHeader(film), streamFormat(film)});
    const Bytes headers = list("LIST", "hdrl", {mainHeader(film), stream});
    return list("RIFF", "AVI ", {headers, list("LIST", "movi", pictures), chunk("idx1", index)});
}

}  // namespace spile::support
