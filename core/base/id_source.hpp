#pragma once

#include "core/base/clock.hpp"
#include "core/base/ids.hpp"
#include "core/base/random.hpp"

namespace spile::inline base {

/// Makes the ids of new subjects.
class IdSource {
public:
    virtual ~IdSource() = default;
    [[nodiscard]] virtual SubjectId next() = 0;
};

/// UUID version 7: 48 bits of milliseconds, then random bits. The time is only there to keep
/// neighbours together in an index; nothing reads it back, since the clock may be wrong.
///
/// Source    RFC 9562, section 5.7.
class Uuid7Source final : public IdSource {
public:
    Uuid7Source(const Clock& clock, Random& random) : clock_(clock), random_(random) {}
    [[nodiscard]] SubjectId next() override;

private:
    const Clock& clock_;
    Random& random_;
};

}  // namespace spile::inline base
