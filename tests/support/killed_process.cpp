#include "tests/support/killed_process.hpp"

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace spile::support {

void Acknowledge::operator()(ByteView message) const
{
    // At most PIPE_BUF bytes: written whole or not at all.
    if (::write(pipe_, message.data(), message.size()) != static_cast<ssize_t>(message.size())) {
        ::_exit(99);
    }
}

static Bytes readToEnd(int pipe)
{
    Bytes all;
    std::array<std::uint8_t, 4096> part{};
    for (;;) {
        const ssize_t count = ::read(pipe, part.data(), part.size());
        if (count > 0) {
            all.insert(all.end(), part.begin(), part.begin() + count);
        } else if (count == 0 || errno != EINTR) {
            return all;
        }
    }
}

Killed runAndKill(std::chrono::microseconds delay,
                  const std::function<int(const Acknowledge&)>& work)
{
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0) {
        std::abort();
    }
    const pid_t child = ::fork();
    if (child < 0) {
        std::abort();
    }
    if (child == 0) {
        ::close(ends[0]);
        ::_exit(work(Acknowledge(ends[1])));
    }
    ::close(ends[1]);
    std::thread killer([&] {
        std::this_thread::sleep_for(delay);
        ::kill(child, SIGKILL);
    });
    Killed killed;
    killed.acknowledged = readToEnd(ends[0]);  // also keeps the pipe from filling up
    ::close(ends[0]);
    killer.join();  // before waiting, so that the number is still the child's
    int status = 0;
    ::waitpid(child, &status, 0);
    killed.ended = WIFEXITED(status);
    killed.status = killed.ended ? WEXITSTATUS(status) : 0;
    return killed;
}

}  // namespace spile::support
