#pragma once

#include "core/base/time.hpp"
#include "core/scan/reader.hpp"

#include <optional>
#include <string>

namespace spile::scan {

/// Decides when a code that is read in live frames is believed: a label of ours at the first read,
/// since it carries a check of its own; any other after two equal reads in a row. Each is believed
/// once, and again only after another code or a pause.
class ReadBelief {
public:
    /// Longer without a read than this, and what was seen is forgotten.
    static constexpr Milliseconds pause = std::chrono::milliseconds(1500);

    /// Take what was read in a frame. True if the code is to be believed now.
    ///
    /// Range     `now` by a clock that does not go back, as Clock::sinceBoot().
    [[nodiscard]] bool take(const Code& code, Milliseconds now);
    void forget() { seen_.reset(); }

private:
    struct Seen {
        std::string text;
        Format format;
        Milliseconds last;
        bool believed;
    };
    std::optional<Seen> seen_;
};

}  // namespace spile::scan
