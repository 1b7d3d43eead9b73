// Source: RFC 8032 (EdDSA), section 7.1, tests 1 to 3 for Ed25519, from memory: that all three
// agree with an independent implementation is the proof that they were remembered rightly.
// Tolerance: none, these are bytes.
#include "core/base/sha256.hpp"
#include "core/ledger/keys.hpp"

#include <gtest/gtest.h>

namespace spile::ledger {

namespace {

struct Row {
    const char* name;
    const char* secret;
    const char* publicKey;
    const char* message;
    const char* signature;
};

constexpr Row rows[] = {
    {"TEST 1", "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b"
     "46bd25bf5f0595bbe24655141438e7a100b"},
    {"TEST 2", "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11"
     "d8c387b2eaeb4302aeeb00d291612bb0c00"},
    {"TEST 3", "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
     "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
     "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc"
     "6594a7c15e9716ed28dc027beceea1ec40a"},
};

}  // namespace

TEST(Ed25519, MatchesRfc8032Section71)
{
    for (const Row& row : rows) {
        SCOPED_TRACE(row.name);
        const SigningKey key(*KeySeed::fromHex(row.secret));
        const Bytes message = *fromHex(row.message);
        EXPECT_EQ(key.publicKey().hex(), row.publicKey);
        EXPECT_EQ(key.sign(message).hex(), row.signature);
        EXPECT_TRUE(verify(*PublicKey::fromHex(row.publicKey), message,
                           *Signature::fromHex(row.signature)));
    }
}

TEST(Ed25519, RefusesEveryOtherMessageKeyAndSignature)
{
    for (const Row& row : rows) {
        SCOPED_TRACE(row.name);
        const PublicKey key = *PublicKey::fromHex(row.publicKey);
        const Signature signature = *Signature::fromHex(row.signature);
        Bytes message = *fromHex(row.message);
        message.push_back(0);
        EXPECT_FALSE(verify(key, message, signature));
        message.pop_back();
        for (std::size_t bit = 0; bit < 8 * Signature::size; ++bit) {
            Bytes flipped = *fromHex(row.signature);
            flipped[bit / 8] = static_cast<std::uint8_t>(flipped[bit / 8] ^ (1U << (bit % 8)));
            EXPECT_FALSE(verify(key, message, *Signature::fromBytes(flipped))) << "bit " << bit;
        }
    }
    const Bytes message = *fromHex(rows[1].message);
    EXPECT_FALSE(verify(*PublicKey::fromHex(rows[0].publicKey), message,
                        *Signature::fromHex(rows[1].signature)));
}

TEST(Ed25519, RefusesASignatureWhoseScalarHasTheGroupOrderAdded)
{
    // RFC 8032, section 5.1.7: S must be below the order L = 2^252 +
    // 27742317777372353535851937790883648493; in little-endian bytes:
    const Bytes order =
        *fromHex("edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010");
    for (const Row& row : rows) {
        SCOPED_TRACE(row.name);
        Bytes signature = *fromHex(row.signature);
        unsigned carry = 0;
        for (std::size_t i = 0; i < order.size(); ++i) {
            const unsigned sum = signature[32 + i] + order[i] + carry;
            signature[32 + i] = static_cast<std::uint8_t>(sum);
            carry = sum >> 8U;
        }
        ASSERT_EQ(carry, 0U);
        EXPECT_FALSE(verify(*PublicKey::fromHex(row.publicKey), *fromHex(row.message),
                            *Signature::fromBytes(signature)));
    }
}

TEST(DeviceIdOfAKey, IsTheFirstHalfOfItsSha256)
{
    const PublicKey key = *PublicKey::fromHex(rows[0].publicKey);
    EXPECT_EQ(deviceIdOf(key).hex(), sha256(key.bytes()).hex().substr(0, 32));
}

}  // namespace spile::ledger
