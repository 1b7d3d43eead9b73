#pragma once

#include "core/base/bytes.hpp"

#include <chrono>
#include <functional>
#include <sys/types.h>

/// A process that is killed in the midst of its work, as a phone's system does.
namespace spile::support {

/// What the child tells its parent; a call returns when the parent could read it even if the
/// child died at once.
class Acknowledge {
public:
    explicit Acknowledge(int pipe) : pipe_(pipe) {}
    void operator()(ByteView message) const;

private:
    int pipe_;
};

struct Killed {
    Bytes acknowledged;  ///< all that the child said
    bool ended = false;  ///< it ended by itself before it was killed
    int status = 0;      ///< its exit status, if it ended
};

/// Run `work` in a process of its own and kill it (SIGKILL) after `delay`. The work's result is
/// the process's exit status. Requires that this process has no database open.
[[nodiscard]] Killed runAndKill(std::chrono::microseconds delay,
                                const std::function<int(const Acknowledge&)>& work);

}  // namespace spile::support
