#pragma once

#include <cstdint>

/// The C++ allocator of the whole program, which can refuse. Only for programs that compile
/// scarce_memory.cpp in; not under sanitizers, which replace operator new themselves.
namespace spile::support {

/// Give so many allocations more, of any thread, then refuse one, or all if it `lasts`.
void refuseMemoryAfter(std::int64_t allocations, bool lasts);
/// Give all again. Return how many have been refused since refuseMemoryAfter().
std::int64_t giveMemory();

}  // namespace spile::support
