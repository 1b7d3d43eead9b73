#include "core/base/sha256.hpp"

#include <array>
#include <cassert>
#include <openssl/evp.h>

namespace spile::inline base {

struct Sha256Stream::Context {
    EVP_MD_CTX* evp = EVP_MD_CTX_new();

    Context() { start(EVP_sha256()); }
    ~Context() { EVP_MD_CTX_free(evp); }
    Context(const Context&) = delete;
    Context& operator=(const Context&) = delete;
    // With the algorithm it has: naming it makes libcrypto look for it anew, under a lock.
    void startAgain() const { start(nullptr); }

private:
    void start(const EVP_MD* algorithm) const
    {
        [[maybe_unused]] const int done = EVP_DigestInit_ex(evp, algorithm, nullptr);
        assert(done == 1);
    }
};

Sha256Stream::Sha256Stream() : context_(std::make_unique<Context>()) {}
Sha256Stream::~Sha256Stream() = default;
Sha256Stream::Sha256Stream(Sha256Stream&& other) noexcept = default;
Sha256Stream& Sha256Stream::operator=(Sha256Stream&& other) noexcept = default;

void Sha256Stream::add(ByteView bytes)
{
    [[maybe_unused]] const int done = EVP_DigestUpdate(context_->evp, bytes.data(), bytes.size());
    assert(done == 1);
}

Sha256 Sha256Stream::finish()
{
    std::array<std::uint8_t, Sha256::size> digest{};
    [[maybe_unused]] const int done = EVP_DigestFinal_ex(context_->evp, digest.data(), nullptr);
    assert(done == 1);
    context_->startAgain();
    return Sha256(digest);
}

Sha256 sha256(ByteView bytes)
{
    // One context a thread: making one costs more than hashing an entry.
    thread_local Sha256Stream stream;
    stream.add(bytes);
    return stream.finish();
}

}  // namespace spile::inline base
