// Source: NIST FIPS 180-4 and NIST's example values for SHA-256: one block ("abc"), two blocks
// (448 bits), and of the longer examples the empty and the million-letter message. Exact.
#include "core/base/sha256.hpp"

#include <array>
#include <gtest/gtest.h>
#include <string>

namespace spile {

struct Example {
    std::string message;
    const char* digest;
};

static std::array<Example, 4> examples()
{
    return {Example{"", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
            Example{"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
            Example{"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
                    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
            Example{std::string(1'000'000, 'a'),
                    "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"}};
}

TEST(Sha256, MatchesTheExamples)
{
    for (const auto& [message, digest] : examples()) {
        EXPECT_EQ(sha256(asBytes(message)).hex(), digest);
    }
}

TEST(Sha256Stream, MatchesTheExamplesInPiecesAndStartsAnew)
{
    Sha256Stream stream;
    for (const auto& [message, digest] : examples()) {
        for (std::size_t at = 0; at < message.size(); at += 1013) {
            stream.add(asBytes(message.substr(at, 1013)));
        }
        EXPECT_EQ(stream.finish().hex(), digest);
    }
}

}  // namespace spile
