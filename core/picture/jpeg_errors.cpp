#include "core/picture/jpeg_errors.hpp"

#include <jerror.h>

namespace spile::picture {

static ErrorCode codeOf(int message)
{
    switch (message) {
        case JERR_OUT_OF_MEMORY:
        case JERR_NO_BACKING_STORE:  // what it would not hold in memory
            return ErrorCode::TooLarge;
        case JERR_SOF_UNSUPPORTED:
        case JERR_CONVERSION_NOTIMPL:
        case JERR_CCIR601_NOTIMPL:
        case JERR_ARITH_NOTIMPL:
            return ErrorCode::Unsupported;
        default:
            return ErrorCode::Damaged;
    }
}

[[noreturn]] static void giveUp(j_common_ptr info)
{
    auto* errors = reinterpret_cast<JpegErrors*>(info->err);
    errors->code = codeOf(info->err->msg_code);
    info->err->format_message(info, errors->message.data());
    std::longjmp(errors->jump, 1);
}

// Warnings that say nothing of the pixels: some writers state odd versions, and some cameras fill
// up the file before its end (from memory; 64 covers any alignment they could be after).
static bool isHarmless(const jpeg_error_mgr& error)
{
    switch (error.msg_code) {
        case JWRN_JFIF_MAJOR:
        case JWRN_ADOBE_XFORM:
            return true;
        case JWRN_EXTRANEOUS_DATA:
            return error.msg_parm.i[0] <= 64 && error.msg_parm.i[1] == JPEG_EOI;
        default:
            return false;
    }
}

// After any other warning libjpeg goes on with pixels that it made up.
static void judgeMessage(j_common_ptr info, int level)
{
    if (level < 0 && !isHarmless(*info->err)) {
        giveUp(info);
    }
}

JpegErrors::JpegErrors()
{
    jpeg_std_error(&manager);
    manager.error_exit = giveUp;
    manager.emit_message = judgeMessage;
}

Error JpegErrors::asError() const
{
    return {code, "JPEG file", message.data(),
            code == ErrorCode::Damaged ? "a whole JPEG file" : "a plainer or smaller JPEG file"};
}

}  // namespace spile::picture
