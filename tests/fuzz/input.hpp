#pragma once

#include "core/base/bytes.hpp"

#include <cstdlib>
#include <iostream>
#include <string>
#include <string_view>

/// libFuzzer calls it with each input; aborting is how a target says that something is wrong.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace spile::fuzz {

/// The bytes of an input, eaten from the front; zeros when it is empty.
class Input {
public:
    Input(const std::uint8_t* data, std::size_t size) : rest_(data, size) {}

    [[nodiscard]] bool empty() const { return rest_.empty(); }

    std::uint8_t byte() { return static_cast<std::uint8_t>(number(1)); }
    bool flag() { return byte() % 2U != 0; }
    /// A number below `limit`; 0 if that is 0.
    std::size_t below(std::size_t limit) { return limit == 0 ? 0 : byte() % limit; }
    /// A number of so many bytes, the first of them the highest.
    std::uint64_t number(std::size_t bytes)
    {
        std::uint64_t value = 0;
        for (; bytes > 0; --bytes) {
            value <<= 8U;
            if (!rest_.empty()) {
                value |= rest_.front();
                rest_ = rest_.subspan(1);
            }
        }
        return value;
    }
    /// The next `count` bytes, or all that are left.
    ByteView bytes(std::size_t count)
    {
        const ByteView taken = rest_.first(std::min(count, rest_.size()));
        rest_ = rest_.subspan(taken.size());
        return taken;
    }
    ByteView rest() { return bytes(rest_.size()); }
    /// Text of less than `limit` characters.
    std::string text(std::size_t limit) { return std::string(asText(bytes(below(limit)))); }

private:
    ByteView rest_;
};

/// Ends the program; libFuzzer keeps the input.
[[noreturn]] inline void stop(std::string_view why, std::string_view what = {})
{
    std::cerr << why << (what.empty() ? "" : ": ") << what << std::endl;
    std::abort();
}

inline void require(bool holds, std::string_view otherwise, std::string_view what = {})
{
    if (!holds) {
        stop(otherwise, what);
    }
}

}  // namespace spile::fuzz
