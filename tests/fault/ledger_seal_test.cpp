// A day file under a passphrase: the right one opens it, and nothing else does.
#include "core/base/simulated.hpp"
#include "core/ledger/seal.hpp"
#include "tests/support/memory_file_system.hpp"

#include <gtest/gtest.h>

namespace spile::ledger {

namespace {

constexpr std::size_t headerBytes = 80;
constexpr std::size_t sealedPiece = 64 * 1024 + 17;

class Sealed : public testing::Test {
protected:
    void write(const Path& path, ByteView bytes)
    {
        if (files_.exists(path)) {
            ASSERT_TRUE(files_.remove(path));
        }
        auto file = files_.create(path);
        ASSERT_TRUE(file);
        ASSERT_TRUE((*file)->append(bytes));
    }
    Bytes content(std::size_t size)
    {
        Bytes bytes(size);
        SeededRandom(size).fill(bytes);
        return bytes;
    }
    Bytes sealedOf(std::size_t size)
    {
        write("/plain", content(size));
        if (files_.exists("/sealed")) {
            EXPECT_TRUE(files_.remove("/sealed"));
        }
        const auto sealed = seal(files_, "/plain", "/sealed", words_, random_, {});
        EXPECT_TRUE(sealed) << sealed.error().value;
        return *readWhole(files_, "/sealed", 1U << 24U);
    }
    // What opening these bytes says; nothing is left of them if it fails.
    Error errorOf(const Bytes& bytes, const std::string& words)
    {
        write("/changed", bytes);
        const auto opened = unseal(files_, "/changed", "/opened", words, {});
        if (opened) {
            EXPECT_TRUE(files_.remove("/opened"));
            return {};
        }
        EXPECT_FALSE(files_.exists("/opened"));
        EXPECT_FALSE(files_.exists("/.tmp-opened"));
        return opened.error();
    }

    support::MemoryFileSystem files_;
    SeededRandom random_{3};
    std::string words_ = "cold cellar wet hands";
};

using Fault59_WrongPassphraseOrPiece = Sealed;
using Fault60_KeyThatAsksForTooMuch = Sealed;

}  // namespace

TEST_F(Sealed, OpenAsWhatTheyWere)
{
    for (const std::size_t size : {std::size_t{0}, std::size_t{1}, std::size_t{65535},
                                   std::size_t{65536}, std::size_t{65537}, std::size_t{200000}}) {
        const Bytes sealed = sealedOf(size);
        EXPECT_EQ(isSealed(files_, "/sealed"), Result<bool>(true));
        EXPECT_EQ(isSealed(files_, "/plain"), Result<bool>(false));
        ASSERT_TRUE(unseal(files_, "/sealed", "/opened", words_, {})) << size;
        EXPECT_EQ(*readWhole(files_, "/opened", 1U << 24U), content(size));
        ASSERT_TRUE(files_.remove("/opened"));
        const std::size_t pieces = size == 0 ? 1 : (size + 65535) / 65536;
        EXPECT_EQ(sealed.size(), headerBytes + size + 17 * pieces);
    }
}

TEST_F(Sealed, AreNeverTheSameTwice) { EXPECT_NE(sealedOf(100), sealedOf(100)); }

TEST_F(Sealed, MindNoHyphensInAPassphraseThatWasMade)
{
    words_ = newPassphrase(random_);
    EXPECT_EQ(words_.size(), 24U);
    EXPECT_NE(words_, newPassphrase(random_));
    const Bytes sealed = sealedOf(10);
    std::string typed;
    for (const char c : words_) {
        typed += c == '-' ? ' ' : static_cast<char>(std::tolower(c));
    }
    EXPECT_EQ(errorOf(sealed, typed), Error{});
}

TEST_F(Fault59_WrongPassphraseOrPiece, SaysWhichOfThem)
{
    const Bytes sealed = sealedOf(200000);
    const Error wrong = errorOf(sealed, "cold cellar wet hand");
    EXPECT_EQ(wrong.code, ErrorCode::Conflict);
    EXPECT_EQ(wrong.subject, "passphrase");
    // The last piece is missing; a part of it; or a byte is.
    for (const std::size_t size :
         {headerBytes + 3 * sealedPiece, sealed.size() - 1, headerBytes, headerBytes + 5}) {
        const Error cut = errorOf(
            Bytes(sealed.begin(), sealed.begin() + static_cast<std::ptrdiff_t>(size)), words_);
        EXPECT_EQ(cut.code, ErrorCode::Damaged) << size;
    }
    // Two pieces have changed places.
    Bytes swapped = sealed;
    std::swap_ranges(swapped.begin() + headerBytes, swapped.begin() + headerBytes + sealedPiece,
                     swapped.begin() + headerBytes + sealedPiece);
    EXPECT_EQ(errorOf(swapped, words_).code, ErrorCode::Damaged);
    // Something follows.
    Bytes longer = sealed;
    longer.resize(longer.size() + 30);
    EXPECT_EQ(errorOf(longer, words_).code, ErrorCode::Damaged);
}

TEST_F(Fault59_WrongPassphraseOrPiece, FindsBytesThatWereChanged)
{
    const Bytes sealed = sealedOf(40);
    for (std::size_t at = 0; at < sealed.size(); at += 5) {  // each takes a tenth of a second
        // What the key's work is, is another matter: Fault60.
        if (at >= 15 && at < 24) {
            continue;
        }
        Bytes changed = sealed;
        changed[at] ^= 1U;
        EXPECT_NE(errorOf(changed, words_), Error{}) << at;
    }
}

TEST_F(Fault60_KeyThatAsksForTooMuch, IsRefusedBeforeAnyOfItIsDone)
{
    Bytes sealed = sealedOf(40);
    for (std::size_t at = 20; at < 24; ++at) {
        sealed[at] = 0xff;  // 4 TiB
    }
    EXPECT_EQ(errorOf(sealed, words_).code, ErrorCode::TooLarge);
    sealed = sealedOf(40);
    sealed[16] = 11;
    EXPECT_EQ(errorOf(sealed, words_).code, ErrorCode::TooLarge);
    sealed[16] = 0;
    EXPECT_EQ(errorOf(sealed, words_).code, ErrorCode::TooLarge);
    sealed = sealedOf(40);
    sealed[15] = 2;
    EXPECT_EQ(errorOf(sealed, words_).code, ErrorCode::Unsupported);
    words_.clear();
    write("/plain", content(3));
    EXPECT_FALSE(seal(files_, "/plain", "/none", words_, random_, {}));
    EXPECT_FALSE(files_.exists("/none"));
}

}  // namespace spile::ledger
