#include "core/picture/png_errors.hpp"

#include <cstdio>

namespace spile::picture {

void PngErrors::giveUp(png_structp png, png_const_charp text)
{
    auto* errors = static_cast<PngErrors*>(png_get_error_ptr(png));
    std::snprintf(errors->message.data(), errors->message.size(), "%s", text);
    std::longjmp(errors->jump, 1);
}

Error PngErrors::asError(ErrorCode code) const
{
    return {code, "PNG file", message.data(), "a whole PNG file"};
}

}  // namespace spile::picture
