#include "core/scan/live_reader.hpp"

#include "core/scan/code_order.hpp"
#include "core/scan/frame_passes.hpp"
#include "core/scan/frame_quality.hpp"
#include "core/scan/soft_sum.hpp"
#include "core/scan/zxing_reading.hpp"

#include <exception>

namespace spile::scan {

using picture::LuminanceView;

class LiveReader::Plan {
public:
    Looked look(const LuminanceView& frame);
    Looked lookThoroughly(const LuminanceView& frame);
    void restart()
    {
        unread_ = 0;
        sum_.forget();
    }

private:
    std::vector<Code> inTurn(const LuminanceView& frame);
    std::vector<Code> redrawn(const LuminanceView& frame);
    [[nodiscard]] Advice advice(const FrameQuality& quality);

    FramePasses passes_;
    SoftSum sum_;
    unsigned unread_ = 0;  // frames in a row without a code
};

// Damaged labels in the middle; what one frame does not say, several may.
std::vector<Code> LiveReader::Plan::redrawn(const LuminanceView& frame)
{
    constexpr float leastFit = 0.4F;
    auto codes = passes_.redrawnMiddle(frame);
    const Found& found = passes_.unread();
    if (codes.empty() && found.fit >= leastFit && !found.softs.empty() &&
        sum_.take(found.softs, found.fit)) {
        codes = passes_.redrawnTogether(sum_.mean(), frame);
    }
    return codes;
}

// The dear ways, one or two for each frame.
std::vector<Code> LiveReader::Plan::inTurn(const LuminanceView& frame)
{
    switch (unread_ % 4) {
        case 0:
        case 2:
            return redrawn(frame);
        case 1: {
            auto codes = passes_.plainWhole(frame);
            return codes.empty() ? FramePasses::othersInMiddle(frame) : codes;
        }
        default:
            switch (unread_ / 4 % 3) {
                case 0:
                    return passes_.redrawnWhole(frame);
                case 1:
                    return passes_.sharpenedMiddle(frame);
                default:
                    return passes_.thresholdedMiddle(frame);
            }
    }
}

Advice LiveReader::Plan::advice(const FrameQuality& quality)
{
    const Found& found = passes_.unread();
    constexpr float surelyThere = 0.4F;
    if (quality.isDim()) {
        return Advice::Light;
    }
    if (found.fit < surelyThere) {
        return quality.isBlurred() ? Advice::Still : Advice::None;
    }
    if (found.module < 2.4F) {
        return Advice::Closer;
    }
    return found.sharpness < 0.4F || quality.isBlurred() ? Advice::Still : Advice::Wipe;
}

Looked LiveReader::Plan::look(const LuminanceView& frame)
{
    Looked looked;
    looked.codes = FramePasses::plainMiddle(frame);
    if (looked.codes.empty()) {
        looked.codes = inTurn(frame);
    }
    if (looked.codes.empty()) {
        ++unread_;
        looked.advice = advice(qualityOf(frame));
        return looked;
    }
    restart();
    addNew(passes_.plainWhole(frame), looked.codes);  // the heads beside it
    orderFromMiddle(looked.codes, frame.width, frame.height);
    return looked;
}

Looked LiveReader::Plan::lookThoroughly(const LuminanceView& frame)
{
    Looked looked;
    looked.codes = FramePasses::plainMiddle(frame);
    const auto orElse = [&](auto pass) {
        if (looked.codes.empty()) {
            looked.codes = pass();
        }
    };
    orElse([&] { return passes_.redrawnMiddle(frame); });
    orElse([&] { return passes_.plainWhole(frame); });
    if (looked.codes.empty()) {
        const FrameQuality quality = qualityOf(frame);
        orElse([&] {
            return quality.isDim() ? passes_.thresholdedMiddle(frame)
                                   : passes_.sharpenedMiddle(frame);
        });
        looked.advice = looked.codes.empty() ? advice(quality) : Advice::None;
    }
    orderFromMiddle(looked.codes, frame.width, frame.height);
    return looked;
}

LiveReader::LiveReader() : plan_(std::make_unique<Plan>()) {}
LiveReader::~LiveReader() = default;
LiveReader::LiveReader(LiveReader&& other) noexcept = default;
LiveReader& LiveReader::operator=(LiveReader&& other) noexcept = default;

static Looked guarded(const LuminanceView& frame, auto look)
{
    if (whyUnsound(frame)) {
        return {};
    }
    try {
        return look();
    } catch (const std::exception&) {
        return {};  // the library gives up; the next frame comes soon
    }
}

Looked LiveReader::look(const LuminanceView& frame)
{
    return guarded(frame, [&] { return plan_->look(frame); });
}

Looked LiveReader::lookThoroughly(const LuminanceView& frame)
{
    return guarded(frame, [&] { return plan_->lookThoroughly(frame); });
}

void LiveReader::restart() { plan_->restart(); }

}  // namespace spile::scan
