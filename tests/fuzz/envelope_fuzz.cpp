// Sealed day files: of any bytes, and sealed here by FORMAT.md, section 5, then altered. What was
// altered is refused and leaves nothing; what was not is opened as it was.
#include "core/ledger/seal.hpp"
#include "tests/fuzz/input.hpp"
#include "tests/support/memory_file_system.hpp"

#include <algorithm>
#include <array>
#include <sodium.h>

namespace {

using namespace spile;
using namespace spile::ledger;
using fuzz::Input;
using fuzz::require;

constexpr std::string_view magic("spile sealed\n\0\0\1", 16);
constexpr const char* passphrase = "cold cellar";
constexpr std::size_t headerBytes = 80;
constexpr std::size_t roundsAt = 16, kibAt = 20;
constexpr std::uint32_t roundsMost = 10, kibMost = 262'144;
constexpr std::uint32_t roundsLeast = 1, kibLeast = 8;  // libsodium's own least
constexpr std::size_t piece = 65'536;

void append(Bytes& to, ByteView bytes) { to.insert(to.end(), bytes.begin(), bytes.end()); }

void putNumber(Bytes& file, std::size_t at, std::uint32_t value)
{
    for (std::size_t i = 0; i < 4; ++i) {
        file[at + i] = static_cast<std::uint8_t>(value >> (8 * i));
    }
}

std::uint32_t numberAt(const Bytes& file, std::size_t at)
{
    std::uint32_t value = 0;
    for (std::size_t i = 4; i > 0; --i) {
        value = value << 8U | file[at + i - 1];
    }
    return value;
}

struct Derived {
    std::array<std::uint8_t, 32> key{};
    std::array<std::uint8_t, 16> check{};
};

Derived derive(ByteView salt)
{
    std::array<std::uint8_t, 48> both{};
    require(sodium_init() >= 0 &&
                crypto_pwhash(both.data(), both.size(), passphrase,
                              std::string_view(passphrase).size(), salt.data(), roundsLeast,
                              std::size_t{kibLeast} * 1024, crypto_pwhash_ALG_ARGON2ID13) == 0,
            "no key");
    Derived derived;
    std::copy_n(both.begin(), 32, derived.key.begin());
    std::copy_n(both.begin() + 32, 16, derived.check.begin());
    return derived;
}

// A second writer of the form, with the least work for the key.
Bytes sealed(ByteView salt, const std::vector<Bytes>& pieces)
{
    Bytes file;
    append(file, asBytes(magic));
    file.resize(24);
    putNumber(file, roundsAt, roundsLeast);
    putNumber(file, kibAt, kibLeast);
    append(file, salt);
    const Derived derived = derive(salt);
    append(file, derived.check);
    crypto_secretstream_xchacha20poly1305_state state;
    std::array<std::uint8_t, crypto_secretstream_xchacha20poly1305_HEADERBYTES> start{};
    crypto_secretstream_xchacha20poly1305_init_push(&state, start.data(), derived.key.data());
    append(file, start);
    const Bytes along = file;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        Bytes closed(pieces[i].size() + crypto_secretstream_xchacha20poly1305_ABYTES);
        crypto_secretstream_xchacha20poly1305_push(
            &state, closed.data(), nullptr, pieces[i].data(), pieces[i].size(),
            i == 0 ? along.data() : nullptr, i == 0 ? along.size() : 0,
            i + 1 == pieces.size() ? crypto_secretstream_xchacha20poly1305_TAG_FINAL : 0);
        append(file, closed);
    }
    return file;
}

std::vector<Bytes> piecesFrom(Input& input)
{
    std::vector<Bytes> pieces(input.below(3), Bytes(piece, input.byte()));
    const ByteView last = input.bytes(input.below(64));
    pieces.emplace_back(last.begin(), last.end());
    return pieces;
}

// Swaps, cuts, doubles and alters.
void alter(Bytes& file, Input& input)
{
    constexpr std::size_t closed = piece + crypto_secretstream_xchacha20poly1305_ABYTES;
    const std::size_t at = input.number(3) % file.size();
    switch (input.below(6)) {
        case 0:
            file[at] ^= input.byte();
            break;
        case 1:
            file.resize(at);
            break;
        case 2:
            append(file, input.bytes(input.below(100)));
            break;
        case 3:
            file.erase(file.begin() + static_cast<std::ptrdiff_t>(at));
            break;
        case 4:
            if (file.size() >= headerBytes + 2 * closed) {
                const auto first = file.begin() + headerBytes;
                std::swap_ranges(first, first + closed, first + closed);
            }
            break;
        default:
            if (file.size() >= headerBytes + closed) {
                const Bytes again(file.begin() + headerBytes, file.begin() + headerBytes + closed);
                append(file, again);
            }
            break;
    }
}

struct Opened {
    Result<void> how;
    std::optional<Bytes> content;
};

Opened opened(const Bytes& file)
{
    support::MemoryFileSystem files;
    require((*files.create("/sealed"))->append(file).has_value(), "no file in memory");
    require(isSealed(files, "/sealed").has_value(), "it does not say whether it is sealed");
    Opened found{unseal(files, "/sealed", "/opened", passphrase, {}), {}};
    const std::size_t left = files.list("/")->size();
    require(left == (found.how ? 2U : 1U), "it leaves a file behind");
    if (found.how) {
        found.content = *readWhole(files, "/opened", file.size());
    }
    return found;
}

// Whether the work for the key is within the limits. If so it is made the least there is; if not,
// the file must be refused before any work, which the fuzzer's limits of time and memory would
// show.
bool isMadeCheap(Bytes& file)
{
    if (file.size() < headerBytes || numberAt(file, roundsAt) < roundsLeast ||
        numberAt(file, roundsAt) > roundsMost || numberAt(file, kibAt) < kibLeast ||
        numberAt(file, kibAt) > kibMost) {
        return false;
    }
    putNumber(file, roundsAt, roundsLeast);
    putNumber(file, kibAt, kibLeast);
    return true;
}

void openAny(Bytes file)
{
    const bool isCheap = isMadeCheap(file);
    const Opened found = opened(file);
    const bool isOurs = file.size() >= headerBytes && asText(ByteView(file).first(16)) == magic;
    require(isOurs || !found.how, "what is not a sealed file is opened");
    require(!isOurs || isCheap || (!found.how && found.how.error().code == ErrorCode::TooLarge),
            "hostile work for the key is not refused for what it is");
}

void openAltered(Input& input)
{
    std::array<std::uint8_t, 16> salt{};
    salt[0] = input.byte();
    const std::vector<Bytes> pieces = piecesFrom(input);
    const Bytes whole = sealed(salt, pieces);
    Bytes content;
    for (const Bytes& part : pieces) {
        append(content, part);
    }
    Bytes file = whole;
    for (std::size_t edits = input.below(4); edits > 0 && !file.empty(); --edits) {
        alter(file, input);
    }
    isMadeCheap(file);
    const Opened found = opened(file);
    require(found.how.has_value() == (file == whole), "altered and opened, or whole and refused");
    require(!found.how || found.content == content, "sealed and opened, it is not the same");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Input input(data, size);
    if (input.flag()) {
        openAltered(input);
    } else {
        const ByteView rest = input.rest();
        openAny({rest.begin(), rest.end()});
    }
    return 0;
}
