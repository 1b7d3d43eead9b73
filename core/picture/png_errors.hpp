#pragma once

#include "core/base/result.hpp"

#include <array>
#include <csetjmp>
#include <png.h>

// Internal to core/picture: libpng reports by calling back, and its call must not return.
namespace spile::picture {

/// Where libpng's failures go. Every call into libpng that can fail runs in guarded().
struct PngErrors {
    std::jmp_buf jump{};
    std::array<char, 128> message{};

    /// To be handed to libpng with a pointer to this.
    [[noreturn]] static void giveUp(png_structp png, png_const_charp text);
    static void ignore(png_structp /*png*/, png_const_charp /*text*/) {}

    [[nodiscard]] Error asError(ErrorCode code) const;
};

/// Run `step`; false if libpng gave up within it. Requires `step` to own nothing: a failure jumps
/// out of it past destructors.
template <class Step>
[[nodiscard]] bool guarded(PngErrors& errors, const Step& step)
{
    if (setjmp(errors.jump) != 0) {
        return false;
    }
    step();
    return true;
}

}  // namespace spile::picture
