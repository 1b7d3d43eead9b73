#include "core/scan/read_belief.hpp"

namespace spile::scan {

bool ReadBelief::take(const Code& code, Milliseconds now)
{
    const bool again = seen_ && seen_->text == code.text && seen_->format == code.format &&
                       now - seen_->last <= pause;
    const bool before = again && seen_->believed;
    const bool believed = before || again || ownLabel(code).has_value();
    seen_ = Seen{code.text, code.format, now, believed};
    return believed && !before;
}

}  // namespace spile::scan
