#include "core/ledger/seal.hpp"

#include <algorithm>
#include <array>
#include <cstring>
#include <sodium.h>

namespace spile::ledger {

namespace {

constexpr std::string_view magic("spile sealed\n\0\0\1", 16);  // the last byte is the form
static_assert(magic.size() == 16);
constexpr std::size_t piece = std::size_t{64} * 1024;
constexpr std::size_t sealedPiece = piece + crypto_secretstream_xchacha20poly1305_ABYTES;
constexpr std::uint32_t usualRounds = 3, roundsMost = 10;
constexpr std::uint32_t usualKib = 64 * 1024, kibMost = 256 * 1024;
constexpr std::size_t checkBytes = 16;
constexpr std::size_t streamBytes = crypto_secretstream_xchacha20poly1305_HEADERBYTES;

using Key = std::array<std::uint8_t, crypto_secretstream_xchacha20poly1305_KEYBYTES>;
static_assert(crypto_pwhash_SALTBYTES == 16);

// Magic, rounds and KiB of Argon2id (little-endian), salt, what the key is checked by, the stream's
// own beginning. All of it is sealed along with the first piece.
struct Header {
    std::uint32_t rounds = usualRounds, kib = usualKib;
    std::array<std::uint8_t, crypto_pwhash_SALTBYTES> salt{};
    std::array<std::uint8_t, checkBytes> check{};
    std::array<std::uint8_t, streamBytes> stream{};

    static constexpr std::size_t size =
        magic.size() + 8 + crypto_pwhash_SALTBYTES + checkBytes + streamBytes;

    [[nodiscard]] Bytes encoded() const
    {
        Bytes bytes(magic.begin(), magic.end());
        for (const std::uint32_t number : {rounds, kib}) {
            for (unsigned shift = 0; shift < 32; shift += 8) {
                bytes.push_back(static_cast<std::uint8_t>(number >> shift));
            }
        }
        bytes.insert(bytes.end(), salt.begin(), salt.end());
        bytes.insert(bytes.end(), check.begin(), check.end());
        bytes.insert(bytes.end(), stream.begin(), stream.end());
        return bytes;
    }

    static Header decoded(ByteView bytes)
    {
        const auto number = [&](std::size_t at) {
            std::uint32_t value = 0;
            for (std::size_t i = 4; i > 0; --i) {
                value = value << 8U | bytes[at + i - 1];
            }
            return value;
        };
        Header header;
        std::size_t at = magic.size();
        header.rounds = number(at);
        header.kib = number(at + 4);
        at += 8;
        const auto fill = [&](auto& array) {
            std::copy_n(bytes.begin() + static_cast<std::ptrdiff_t>(at), array.size(),
                        array.begin());
            at += array.size();
        };
        fill(header.salt);
        fill(header.check);
        fill(header.stream);
        return header;
    }
};

// Those of newPassphrase() in one way of writing; all others as they are.
std::string spelled(const std::string& passphrase)
{
    std::string plain;
    for (const char c : passphrase) {
        if (c != ' ' && c != '-') {
            plain += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
        }
    }
    const bool made = plain.size() == 20 && std::all_of(plain.begin(), plain.end(), [](char c) {
                          return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z');
                      });
    return made ? plain : passphrase;
}

struct Derived {
    Key key{};
    std::array<std::uint8_t, checkBytes> check{};
    ~Derived() { sodium_memzero(key.data(), key.size()); }
};

Result<void> derive(const Header& header, const std::string& passphrase, Derived& into)
{
    std::array<std::uint8_t, Key{}.size() + checkBytes> both{};
    const std::string text = spelled(passphrase);
    if (sodium_init() < 0 ||
        crypto_pwhash(both.data(), both.size(), text.data(), text.size(), header.salt.data(),
                      header.rounds, std::size_t{header.kib} * 1024,
                      crypto_pwhash_ALG_ARGON2ID13) != 0) {
        return fail(ErrorCode::Storage, "passphrase", "there is not enough memory for its key",
                    std::to_string(header.kib / 1024) + " MiB");
    }
    std::copy_n(both.begin(), into.key.size(), into.key.begin());
    std::copy_n(both.begin() + static_cast<std::ptrdiff_t>(into.key.size()), checkBytes,
                into.check.begin());
    sodium_memzero(both.data(), both.size());
    return {};
}

// Writes beside `to`, and gives it its name once it is whole.
Result<void> writeAside(FileSystem& files, const Path& to,
                        const std::function<Result<void>(OutputFile&)>& write)
{
    if (files.exists(to)) {
        return fail(ErrorCode::Conflict, to.string(), "it exists", "choose another name");
    }
    const Path temporary = to.parent_path() / (".tmp-" + to.filename().string());
    if (files.exists(temporary)) {  // left by a process that was killed
        SPILE_TRY(files.remove(temporary));
    }
    const auto all = [&]() -> Result<void> {
        SPILE_ASSIGN(file, files.create(temporary));
        SPILE_TRY(write(*file));
        SPILE_TRY(file->sync());
        SPILE_TRY(files.rename(temporary, to));
        return files.syncFolder(folderOf(to));
    };
    auto written = all();
    if (!written && files.exists(temporary)) {
        std::ignore = files.remove(temporary);  // the first error is the one to report
    }
    return written;
}

Error damaged(const Path& file, const char* how)
{
    return {ErrorCode::Damaged, file.filename().string(), how, "copy it again"};
}

// Opens the pieces one after the other.
Result<void> openPieces(InputFile& in, OutputFile& out, const Header& header, const Key& key,
                        const Path& from, const Job& job)
{
    crypto_secretstream_xchacha20poly1305_state state;
    if (crypto_secretstream_xchacha20poly1305_init_pull(&state, header.stream.data(), key.data()) !=
        0) {
        return tl::unexpected(damaged(from, "its beginning was changed"));
    }
    const Bytes along = header.encoded();
    Bytes sealed(sealedPiece);
    Bytes plain(piece);
    bool last = false;
    for (std::uint64_t at = Header::size; at < in.size(); at += sealed.size()) {
        if (last) {
            return tl::unexpected(damaged(from, "there is more behind its end"));
        }
        sealed.resize(std::min<std::uint64_t>(in.size() - at, sealedPiece));
        SPILE_TRY(in.readAt(at, sealed));
        unsigned long long size = 0;
        unsigned char tag = 0;
        const bool first = at == Header::size;
        if (sealed.size() < crypto_secretstream_xchacha20poly1305_ABYTES ||
            crypto_secretstream_xchacha20poly1305_pull(
                &state, plain.data(), &size, &tag, sealed.data(), sealed.size(),
                first ? along.data() : nullptr, first ? along.size() : 0) != 0) {
            return tl::unexpected(damaged(from, "a piece of it was changed"));
        }
        last = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
        SPILE_TRY(out.append(ByteView(plain).first(size)));
        if (!job.advance(at, in.size())) {
            return fail(ErrorCode::Cancelled, "day file");
        }
    }
    return last ? Result<void>() : tl::unexpected(damaged(from, "its end is missing"));
}

Result<Header> readHeader(InputFile& in, const Path& from)
{
    if (in.size() < Header::size) {
        return tl::unexpected(damaged(from, "it is too short"));
    }
    Bytes bytes(Header::size);
    SPILE_TRY(in.readAt(0, bytes));
    if (std::memcmp(bytes.data(), magic.data(), magic.size() - 1) != 0) {
        return tl::unexpected(damaged(from, "it is not a sealed file"));
    }
    if (bytes[magic.size() - 1] != static_cast<std::uint8_t>(magic.back())) {
        return fail(ErrorCode::Unsupported, from.filename().string(),
                    "form " + std::to_string(bytes[magic.size() - 1]), "update Spile");
    }
    Header header = Header::decoded(bytes);
    if (header.rounds < 1 || header.rounds > roundsMost || header.kib < 8 || header.kib > kibMost) {
        return fail(ErrorCode::TooLarge, "passphrase",
                    std::to_string(header.rounds) + " rounds of " +
                        std::to_string(header.kib / 1024) + " MiB",
                    "at most 10 of 256");
    }
    return header;
}

}  // namespace

std::string newPassphrase(Random& random)
{
    constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    std::string made;
    for (int i = 0; i < 20; ++i) {
        made += i > 0 && i % 4 == 0 ? "-" : "";
        made += letters[random.below(static_cast<std::uint32_t>(letters.size()))];
    }
    return made;
}

Result<bool> isSealed(FileSystem& files, const Path& file)
{
    SPILE_ASSIGN(in, files.open(file));
    std::array<std::uint8_t, magic.size() - 1> bytes{};
    if (in->size() < bytes.size()) {
        return false;
    }
    SPILE_TRY(in->readAt(0, bytes));
    return std::memcmp(bytes.data(), magic.data(), bytes.size()) == 0;
}

Result<void> seal(FileSystem& files, const Path& from, const Path& to,
                  const std::string& passphrase, Random& random, const Job& job)
{
    if (passphrase.empty()) {
        return fail(ErrorCode::OutOfRange, "passphrase", "nothing", "some words");
    }
    SPILE_ASSIGN(in, files.open(from));
    Header header;
    random.fill(header.salt);
    Derived derived;
    SPILE_TRY(derive(header, passphrase, derived));
    header.check = derived.check;
    crypto_secretstream_xchacha20poly1305_state state;
    crypto_secretstream_xchacha20poly1305_init_push(&state, header.stream.data(),
                                                    derived.key.data());
    return writeAside(files, to, [&](OutputFile& out) -> Result<void> {
        const Bytes along = header.encoded();
        SPILE_TRY(out.append(along));
        Bytes plain(piece);
        Bytes sealed(sealedPiece);
        std::uint64_t at = 0;
        do {
            const bool first = at == 0;
            plain.resize(std::min<std::uint64_t>(in->size() - at, piece));
            SPILE_TRY(in->readAt(at, plain));
            at += plain.size();
            sealed.resize(plain.size() + crypto_secretstream_xchacha20poly1305_ABYTES);
            crypto_secretstream_xchacha20poly1305_push(
                &state, sealed.data(), nullptr, plain.data(), plain.size(),
                first ? along.data() : nullptr, first ? along.size() : 0,
                at == in->size() ? crypto_secretstream_xchacha20poly1305_TAG_FINAL : 0);
            SPILE_TRY(out.append(sealed));
            if (!job.advance(at, in->size())) {
                return fail(ErrorCode::Cancelled, "day file");
            }
        } while (at < in->size());
        return {};
    });
}

Result<void> unseal(FileSystem& files, const Path& from, const Path& to,
                    const std::string& passphrase, const Job& job)
{
    SPILE_ASSIGN(in, files.open(from));
    SPILE_ASSIGN(header, readHeader(*in, from));
    Derived derived;
    SPILE_TRY(derive(header, passphrase, derived));
    if (sodium_memcmp(derived.check.data(), header.check.data(), checkBytes) != 0) {
        return fail(ErrorCode::Conflict, "passphrase", "it is not the one of this file",
                    "the one that the file was sealed with");
    }
    return writeAside(files, to, [&](OutputFile& out) {
        return openPieces(*in, out, header, derived.key, from, job);
    });
}

}  // namespace spile::ledger
