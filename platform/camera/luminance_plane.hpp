#pragma once

#include "core/picture/image.hpp"

#include <QVideoFrame>
#include <optional>

namespace spile::camera {

/// Where the luminance of a frame's pixels lies in its first plane.
struct LuminancePlane {
    int offset = 0;       // bytes before the first
    int pixelStride = 1;  // bytes from one to the next
};

/// None for a format that cannot be read from memory. Of 16 bits the high byte is taken; of red,
/// green and blue the green, which is most of the luminance and all of it in black and white.
[[nodiscard]] std::optional<LuminancePlane> luminancePlane(QVideoFrameFormat::PixelFormat format);

/// A frame mapped for reading, as long as this lives. Never converts: QVideoFrame::toImage() of Qt
/// 6.4 writes past its picture for YUV422P.
class MappedFrame {
public:
    explicit MappedFrame(QVideoFrame frame);
    ~MappedFrame();
    Q_DISABLE_COPY_MOVE(MappedFrame)

    /// None if the format is not read or the frame cannot be mapped.
    [[nodiscard]] const std::optional<picture::LuminanceView>& luminance() const { return view_; }

private:
    QVideoFrame frame_;
    std::optional<picture::LuminanceView> view_;
};

}  // namespace spile::camera
