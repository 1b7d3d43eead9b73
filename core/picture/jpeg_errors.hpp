#pragma once

#include "core/base/result.hpp"

#include <array>
#include <csetjmp>
#include <cstdio>  // jpeglib.h needs it first
#include <jpeglib.h>
#include <type_traits>

// Internal to core/picture: libjpeg reports by calling back, and its call must not return.
namespace spile::picture {

/// Where libjpeg's failures go. Every call into libjpeg that can fail runs in guarded().
struct JpegErrors {
    jpeg_error_mgr manager{};  // first, so that libjpeg's pointer to it is one to all of this
    std::jmp_buf jump{};
    ErrorCode code = ErrorCode::Damaged;
    std::array<char, JMSG_LENGTH_MAX> message{};

    JpegErrors();
    JpegErrors(const JpegErrors&) = delete;
    JpegErrors& operator=(const JpegErrors&) = delete;
    ~JpegErrors() = default;

    [[nodiscard]] Error asError() const;
};

static_assert(std::is_standard_layout_v<JpegErrors>);

/// Run `step`; false if libjpeg gave up within it. Requires `step` to own nothing: a failure
/// jumps out of it past destructors.
template <class Step>
[[nodiscard]] bool guarded(JpegErrors& errors, const Step& step)
{
    if (setjmp(errors.jump) != 0) {
        return false;
    }
    step();
    return true;
}

}  // namespace spile::picture
