// Calls of the system that a signal interrupts, or that do a part of what they were asked for: the
// rest follows, and nothing is lost or twice.
//
// A pipe that its reader empties slowly gives both: a write to it waits, a signal interrupts it
// before a byte was taken (EINTR) or after some (a short write).
#include "core/base/sha256.hpp"
#include "platform/system/descriptor.hpp"
#include "platform/system/disk_file_system.hpp"
#include "tests/support/temp_folder.hpp"

#include <atomic>
#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/time.h>
#include <thread>
#include <unistd.h>

namespace spile::system {

namespace {

std::atomic<int> signals{0};

// Sends this process a signal every millisecond; calls that it interrupts are not begun anew.
class Interruptions {
public:
    Interruptions()
    {
        signals = 0;
        struct sigaction action {};
        action.sa_handler = [](int) { ++signals; };
        sigaction(SIGALRM, &action, &before_);
        every(1000);
    }
    ~Interruptions()
    {
        every(0);
        sigaction(SIGALRM, &before_, nullptr);
    }
    Interruptions(const Interruptions&) = delete;
    Interruptions& operator=(const Interruptions&) = delete;

private:
    static void every(int microseconds)
    {
        itimerval timer{};
        timer.it_interval.tv_usec = timer.it_value.tv_usec = microseconds;
        setitimer(ITIMER_REAL, &timer, nullptr);
    }
    struct sigaction before_ {};
};

// The signals go to the thread that makes the calls.
void leaveSignalsToOthers()
{
    sigset_t all;
    sigfillset(&all);
    pthread_sigmask(SIG_BLOCK, &all, nullptr);
}

Bytes numbered(std::size_t count)
{
    Bytes bytes(count);
    for (std::size_t i = 0; i < count; ++i) {
        bytes[i] = static_cast<std::uint8_t>((i * 2654435761U) >> 13U);
    }
    return bytes;
}

// Empties a pipe, with a rest after each piece.
class SlowReader {
public:
    explicit SlowReader(const Path& pipe) : thread_([this, pipe] { read(pipe); }) {}
    ~SlowReader() { finish(); }
    SlowReader(const SlowReader&) = delete;
    SlowReader& operator=(const SlowReader&) = delete;

    const Bytes& finish()
    {
        if (thread_.joinable()) {
            thread_.join();
        }
        return bytes_;
    }

private:
    void read(const Path& pipe)
    {
        leaveSignalsToOthers();
        const int number = ::open(pipe.c_str(), O_RDONLY);
        Bytes piece(7000);
        for (ssize_t count = 1; count > 0;) {
            std::this_thread::sleep_for(std::chrono::milliseconds(3));
            count = ::read(number, piece.data(), piece.size());
            bytes_.insert(bytes_.end(), piece.begin(), piece.begin() + std::max<ssize_t>(count, 0));
        }
        ::close(number);
    }

    Bytes bytes_;
    std::thread thread_;
};

}  // namespace

TEST(Fault12_InterruptedCalls, WriteAllOfItOnce)
{
    const support::TempFolder folder;
    const Path pipe = folder.path() / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    const Bytes bytes = numbered(600'000);  // of which a pipe holds 65,536
    SlowReader reader(pipe);
    {
        const Interruptions interruptions;
        auto file = Descriptor::open(pipe, O_WRONLY);
        ASSERT_TRUE(file.has_value());
        const auto written = file->write(bytes);
        EXPECT_TRUE(written.has_value()) << written.error().value;
        EXPECT_GT(signals, 20);
    }
    EXPECT_EQ(sha256(reader.finish()), sha256(bytes));
}

// What the fault is without the loop: the same write, once, does only a part or fails.
TEST(Fault12_InterruptedCalls, AreSeenToDoAPartWithoutTheLoop)
{
    const support::TempFolder folder;
    const Path pipe = folder.path() / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    const Bytes bytes = numbered(600'000);
    SlowReader reader(pipe);
    const int number = ::open(pipe.c_str(), O_WRONLY);
    ASSERT_GE(number, 0);
    ssize_t count = 0;
    {
        const Interruptions interruptions;
        count = ::write(number, bytes.data(), bytes.size());
    }
    ::close(number);
    EXPECT_LT(count, static_cast<ssize_t>(bytes.size()));
}

// Files on a disk, while signals keep coming.
TEST(Fault12_InterruptedCalls, KeepAFileWhole)
{
    const support::TempFolder folder;
    DiskFileSystem files;
    const Bytes bytes = numbered(3'000'000);
    const Interruptions interruptions;
    for (int round = 0; round < 10; ++round) {
        const Path path = folder.path() / std::to_string(round);
        ASSERT_TRUE(writeWhole(files, path, bytes));
        const auto back = readWhole(files, path, bytes.size());
        ASSERT_TRUE(back);
        ASSERT_EQ(sha256(*back), sha256(bytes));
    }
    EXPECT_GT(signals, 0);
}

}  // namespace spile::system
