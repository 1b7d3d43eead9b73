#include "core/base/sha256.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/signature_checks.hpp"

#include <gtest/gtest.h>

namespace spile::ledger {

namespace {

constexpr std::uint64_t many = 3000;  // more batches than there are cores, on most machines

SignatureChecks::One signedOne(const SigningKey& key, std::uint64_t seq)
{
    SignatureChecks::One one;
    one.key = key.publicKey();
    one.id = *EntryId::fromBytes(sha256(asBytes(std::to_string(seq))).bytes());
    one.signature = key.sign(signedMessage(one.cellar, one.id));
    one.device = key.deviceId();
    one.seq = seq;
    return one;
}

// Checks `many` signatures, of which that of `bad` is another entry's; 0: none.
Result<void> checkAll(std::uint64_t bad)
{
    const SigningKey key(KeySeed{});
    SignatureChecks checks;
    for (std::uint64_t seq = 1; seq <= many; ++seq) {
        SignatureChecks::One one = signedOne(key, seq);
        if (seq == bad) {
            one.signature = signedOne(key, seq + many).signature;
        }
        SPILE_TRY(checks.add(one));
    }
    return checks.finish();
}

}  // namespace

TEST(SignatureChecks, PassesWhatIsSigned) { EXPECT_TRUE(checkAll(0)); }

TEST(SignatureChecks, FindsOneBadSignatureWhereverItIs)
{
    for (const std::uint64_t bad :
         {std::uint64_t{1}, std::uint64_t{256}, std::uint64_t{257}, many / 2, many - 1, many}) {
        const auto checked = checkAll(bad);
        ASSERT_FALSE(checked) << bad;
        EXPECT_EQ(checked.error().code, ErrorCode::Damaged);
        EXPECT_TRUE(checked.error().value.ends_with("/" + std::to_string(bad)))
            << checked.error().value;
    }
}

}  // namespace spile::ledger
