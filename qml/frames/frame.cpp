#include "qml/frames/frame.hpp"

#include <utility>

namespace spile::frames {

namespace {

class Still final : public Frame {
public:
    explicit Still(picture::Image picture) : picture_(std::move(picture)) {}
    picture::LuminanceView luminance() override { return viewOf(picture_); }

private:
    picture::Image picture_;
};

}  // namespace

std::unique_ptr<Frame> frameOf(picture::Image picture)
{
    return std::make_unique<Still>(std::move(picture));
}

}  // namespace spile::frames
