#include "tests/support/scarce_memory.hpp"

#include <atomic>
#include <cstdlib>
#include <new>

namespace spile::support {

namespace {

std::atomic<std::int64_t> left{-1};  // negative: all are given
std::atomic<bool> lasting{false};
std::atomic<std::int64_t> refused{0};

bool mayAllocate()
{
    if (left < 0) {
        return true;
    }
    const std::int64_t before = left.fetch_sub(1);
    if (before > 0) {
        return true;
    }
    left = lasting ? 0 : -1;
    ++refused;
    return false;
}

}  // namespace

void refuseMemoryAfter(std::int64_t allocations, bool lasts)
{
    lasting = lasts;
    refused = 0;
    left = allocations;
}

std::int64_t giveMemory()
{
    left = -1;
    return refused;
}

static void* allocated(std::size_t bytes)
{
    void* block = mayAllocate() ? std::malloc(bytes == 0 ? 1 : bytes) : nullptr;
    return block == nullptr ? throw std::bad_alloc() : block;
}

static void* allocatedAligned(std::size_t bytes, std::size_t alignment)
{
    const std::size_t whole = (bytes + alignment - 1) / alignment * alignment;
    void* block = mayAllocate() ? std::aligned_alloc(alignment, whole) : nullptr;
    return block == nullptr ? throw std::bad_alloc() : block;
}

}  // namespace spile::support

// The array and nothrow forms of the standard library come to these.
void* operator new(std::size_t bytes) { return spile::support::allocated(bytes); }
void* operator new(std::size_t bytes, std::align_val_t alignment)
{
    return spile::support::allocatedAligned(bytes, static_cast<std::size_t>(alignment));
}
void operator delete(void* block) noexcept { std::free(block); }
void operator delete(void* block, std::size_t /*bytes*/) noexcept { std::free(block); }
void operator delete(void* block, std::align_val_t /*alignment*/) noexcept { std::free(block); }
void operator delete(void* block, std::size_t /*bytes*/, std::align_val_t /*alignment*/) noexcept
{
    std::free(block);
}
