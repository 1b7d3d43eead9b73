#include "core/ledger/keys.hpp"

#include "core/base/sha256.hpp"

#include <sodium.h>

namespace spile::ledger {

// libsodium asks to be started once before anything else; it is safe from any thread.
static void startSodium() { [[maybe_unused]] static const int started = sodium_init(); }

DeviceId deviceIdOf(const PublicKey& key)
{
    return *DeviceId::fromBytes(sha256(key.bytes()).bytes().first(DeviceId::size));
}

SigningKey::SigningKey(const KeySeed& seed)
{
    startSodium();
    std::array<std::uint8_t, crypto_sign_PUBLICKEYBYTES> key{};
    static_assert(crypto_sign_SECRETKEYBYTES == 64);
    crypto_sign_seed_keypair(key.data(), secret_.data(), seed.bytes().data());
    public_ = PublicKey(key);
}

SigningKey::~SigningKey() { wipe(secret_); }

void wipe(std::span<std::uint8_t> secret) { sodium_memzero(secret.data(), secret.size()); }

void wipe(std::string& secret) { sodium_memzero(secret.data(), secret.size()); }

Signature SigningKey::sign(ByteView message) const
{
    std::array<std::uint8_t, crypto_sign_BYTES> signature{};
    crypto_sign_detached(signature.data(), nullptr, message.data(), message.size(), secret_.data());
    return Signature(signature);
}

bool verify(const PublicKey& key, ByteView message, const Signature& signature)
{
    startSodium();
    return crypto_sign_verify_detached(signature.bytes().data(), message.data(), message.size(),
                                       key.bytes().data()) == 0;
}

}  // namespace spile::ledger
