#pragma once

#include <cstddef>
#include <cstdint>

/// What a fuzzer feeds: the same entry point for driver.cpp under gcc and for libFuzzer.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
