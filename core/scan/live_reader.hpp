#pragma once

#include "core/scan/reader.hpp"

#include <memory>
#include <vector>

namespace spile::scan {

/// What would help to read a code that is not read, judged by what was seen.
enum class Advice : std::uint8_t {
    None,
    Light,   ///< the picture is dark, or what there is of it is noise
    Closer,  ///< a symbol is there, but its modules are too small
    Still,   ///< a symbol is there, but blurred
    Wipe,    ///< a symbol is there, large and sharp, but covered or dirty
};

struct Looked {
    std::vector<Code> codes;  // nearest the middle first; the others are heads beside it
    Advice advice = Advice::None;
};

/// Reads the frames of one camera, one after another.
///
/// Each frame is looked at in its middle first, in the cheap ways; the longer nothing is read, the
/// more ways take turns, so that no frame takes much longer than a camera needs for the next.
/// Labels that are too damaged for one frame are read from what several frames say together. Keeps
/// its buffers: once it has seen a few frames of a size it takes no more memory, apart from what
/// ZXing takes and gives back.
///
/// Threads   one at a time.
class LiveReader {
public:
    LiveReader();
    ~LiveReader();
    LiveReader(LiveReader&& other) noexcept;
    LiveReader& operator=(LiveReader&& other) noexcept;
    LiveReader(const LiveReader&) = delete;
    LiveReader& operator=(const LiveReader&) = delete;

    /// Look at the next frame. Nothing for a view that readPicture() refuses: the next comes soon.
    [[nodiscard]] Looked look(const picture::LuminanceView& frame);
    /// Look at one frame in every way, until something is read: up to about 45 ms.
    [[nodiscard]] Looked lookThoroughly(const picture::LuminanceView& frame);
    /// Forget the frames of before, as after a pause or when the camera was turned to another
    /// thing.
    void restart();

private:
    class Plan;
    std::unique_ptr<Plan> plan_;
};

}  // namespace spile::scan
