#pragma once

#include "core/scan/redraw.hpp"
#include "core/scan/redraw_plane.hpp"

#include <vector>

namespace spile::scan {

/// The ways to look at one frame, each by itself, with the buffers they share. What they find has
/// its corners in the frame. They require a sound view and throw what ZXing throws.
class FramePasses {
public:
    using View = picture::LuminanceView;

    /// QR codes in the middle, as it is. People aim: it holds the label more often than not.
    [[nodiscard]] static std::vector<Code> plainMiddle(const View& frame);
    /// QR codes anywhere.
    [[nodiscard]] std::vector<Code> plainWhole(const View& frame);
    /// One Data Matrix or Code 128 right in the middle.
    [[nodiscard]] static std::vector<Code> othersInMiddle(const View& frame);
    /// The middle at twice its size, sharpened: for small modules and slight blur.
    [[nodiscard]] std::vector<Code> sharpenedMiddle(const View& frame);
    /// The middle smoothed twice and told light from dark by its surroundings: for dim light.
    [[nodiscard]] std::vector<Code> thresholdedMiddle(const View& frame);
    /// Damaged labels in the middle.
    [[nodiscard]] std::vector<Code> redrawnMiddle(const View& frame);
    /// Damaged labels anywhere, at half the size.
    [[nodiscard]] std::vector<Code> redrawnWhole(const View& frame);

    /// The best of what the last of the redrawn passes did not read; its corners in the part that
    /// was looked at.
    [[nodiscard]] const Found& unread() const { return redrawer_.unread(); }
    /// What several frames say together, placed where the last redrawnMiddle() found it unread.
    [[nodiscard]] std::vector<Code> redrawnTogether(std::span<const float> softs,
                                                    const View& frame);

private:
    redraw::Plane first_;
    redraw::Plane second_;
    redraw::DarkMap darkMap_;
    Redrawer redrawer_;
};

/// The part of a frame that most passes look at: half of each side, but neither so small that a
/// label close by does not fit nor so large that it takes too long.
struct Part {
    picture::LuminanceView view;
    Point topLeft;
};
[[nodiscard]] Part middleOf(const picture::LuminanceView& frame);

}  // namespace spile::scan
