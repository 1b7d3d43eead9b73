#pragma once

#include "core/base/bytes.hpp"
#include "core/base/ids.hpp"
#include "core/base/key_store.hpp"

#include <array>
#include <span>
#include <string>
#include <string_view>

/// Ed25519 signatures by libsodium, the one library for them on every platform: implementations
/// differ on odd inputs, and all replicas must agree.
///
/// Source    RFC 8032; checked in tests/reference/ed25519_test.cpp.
namespace spile::ledger {

using PublicKey = ByteId<struct PublicKeyKind, 32>;
using Signature = ByteId<struct SignatureKind, 64>;

/// The first 16 bytes of the key's SHA-256: whoever shows a key proves which device it is.
[[nodiscard]] DeviceId deviceIdOf(const PublicKey& key);

/// A key that can sign.
class SigningKey {
public:
    explicit SigningKey(const KeySeed& seed);
    ~SigningKey();  // wipes the secret
    SigningKey(const SigningKey&) = default;
    SigningKey& operator=(const SigningKey&) = default;

    [[nodiscard]] const PublicKey& publicKey() const { return public_; }
    [[nodiscard]] DeviceId deviceId() const { return deviceIdOf(public_); }
    [[nodiscard]] Signature sign(ByteView message) const;

private:
    PublicKey public_;
    std::array<std::uint8_t, 64> secret_{};
};

/// Overwrite a secret that is of no more use. A call that the compiler does not leave out.
void wipe(std::span<std::uint8_t> secret);
void wipe(std::string& secret);

[[nodiscard]] bool verify(const PublicKey& key, ByteView message, const Signature& signature);

}  // namespace spile::ledger
