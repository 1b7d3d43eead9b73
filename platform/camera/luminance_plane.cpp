#include "platform/camera/luminance_plane.hpp"

#include <utility>

namespace spile::camera {

std::optional<LuminancePlane> luminancePlane(QVideoFrameFormat::PixelFormat format)
{
    // The names of Qt 6 for colours are the order of the bytes in memory.
    switch (format) {
        case QVideoFrameFormat::Format_NV12:
        case QVideoFrameFormat::Format_NV21:
        case QVideoFrameFormat::Format_YUV420P:
        case QVideoFrameFormat::Format_YV12:
        case QVideoFrameFormat::Format_YUV422P:
        case QVideoFrameFormat::Format_IMC1:
        case QVideoFrameFormat::Format_IMC2:
        case QVideoFrameFormat::Format_IMC3:
        case QVideoFrameFormat::Format_IMC4:
        case QVideoFrameFormat::Format_Y8:
            return LuminancePlane{0, 1};
        case QVideoFrameFormat::Format_YUYV:
            return LuminancePlane{0, 2};
        case QVideoFrameFormat::Format_UYVY:
        case QVideoFrameFormat::Format_P010:
        case QVideoFrameFormat::Format_P016:
        case QVideoFrameFormat::Format_Y16:
            return LuminancePlane{1, 2};
        case QVideoFrameFormat::Format_BGRA8888:
        case QVideoFrameFormat::Format_BGRA8888_Premultiplied:
        case QVideoFrameFormat::Format_BGRX8888:
        case QVideoFrameFormat::Format_RGBA8888:
        case QVideoFrameFormat::Format_RGBX8888:
            return LuminancePlane{1, 4};
        case QVideoFrameFormat::Format_ARGB8888:
        case QVideoFrameFormat::Format_ARGB8888_Premultiplied:
        case QVideoFrameFormat::Format_XRGB8888:
        case QVideoFrameFormat::Format_ABGR8888:
        case QVideoFrameFormat::Format_XBGR8888:
            return LuminancePlane{2, 4};
        default:
            return std::nullopt;
    }
}

MappedFrame::MappedFrame(QVideoFrame frame) : frame_(std::move(frame))
{
    const auto plane = luminancePlane(frame_.pixelFormat());
    if (!plane || !frame_.map(QVideoFrame::ReadOnly)) {
        return;
    }
    const int rowStride = frame_.bytesPerLine(0);
    if (frame_.bits(0) == nullptr || rowStride < frame_.width() * plane->pixelStride) {
        return;
    }
    view_ = {frame_.bits(0) + plane->offset, frame_.width(), frame_.height(), rowStride,
             plane->pixelStride};
}

MappedFrame::~MappedFrame()
{
    if (frame_.isMapped()) {
        frame_.unmap();
    }
}

}  // namespace spile::camera
