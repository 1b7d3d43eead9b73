// Feeds a fuzz target without libFuzzer: FUZZER CORPUS [CASES [SEED]]. The lines of the corpus come
// first as they are, then changed ones and random ones. The same seed makes the same inputs.
#include "tests/fuzz/driver.hpp"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <random>
#include <string>
#include <vector>

namespace {

using Random = std::mt19937_64;

std::size_t below(Random& random, std::size_t limit)
{
    return limit == 0 ? 0 : static_cast<std::size_t>(random() % limit);
}

char anyByte(Random& random) { return static_cast<char>(random() & 0xffU); }

std::string randomBytes(Random& random)
{
    constexpr std::size_t longest = 200;
    std::string bytes(below(random, longest), '\0');
    std::generate(bytes.begin(), bytes.end(), [&] { return anyByte(random); });
    return bytes;
}

// One change: a byte altered, taken away or put in, a piece doubled, or two inputs joined.
void change(std::string& bytes, Random& random, const std::vector<std::string>& corpus)
{
    const std::size_t at = below(random, bytes.size());
    switch (below(random, 5)) {
        case 0:
            if (!bytes.empty()) {
                bytes[at] = anyByte(random);
            }
            break;
        case 1:
            bytes.erase(at, 1);
            break;
        case 2:
            bytes.insert(at, 1, anyByte(random));
            break;
        case 3:
            bytes.insert(at, bytes.substr(at, below(random, 8)));
            break;
        default:
            if (!corpus.empty()) {
                bytes += corpus[below(random, corpus.size())];
            }
            break;
    }
}

std::string nextInput(Random& random, const std::vector<std::string>& corpus)
{
    if (corpus.empty() || below(random, 2) == 0) {
        return randomBytes(random);
    }
    std::string bytes = corpus[below(random, corpus.size())];
    for (std::size_t changes = 1 + below(random, 4); changes > 0; --changes) {
        change(bytes, random, corpus);
    }
    return bytes;
}

void feed(const std::string& bytes)
{
    std::vector<std::uint8_t> data(bytes.begin(), bytes.end());
    LLVMFuzzerTestOneInput(data.data(), data.size());
}

unsigned long long numberAt(char** argv, int argc, int at, unsigned long long otherwise)
{
    constexpr int decimal = 10;
    return argc > at ? std::strtoull(argv[at], nullptr, decimal) : otherwise;
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::cerr << "usage: FUZZER CORPUS [CASES [SEED]]\n";
        return 2;
    }
    std::ifstream in(argv[1], std::ios::binary);
    if (!in) {
        std::cerr << "there is no corpus " << argv[1] << '\n';
        return 2;
    }
    std::vector<std::string> corpus;
    for (std::string line; std::getline(in, line);) {
        corpus.push_back(line);
    }
    const auto cases = numberAt(argv, argc, 2, 2000);
    Random random(numberAt(argv, argc, 3, 1));
    std::for_each(corpus.begin(), corpus.end(), feed);
    for (unsigned long long i = 0; i < cases; ++i) {
        feed(nextInput(random, corpus));
    }
    std::cout << corpus.size() + cases << " inputs\n";
    return 0;
}
