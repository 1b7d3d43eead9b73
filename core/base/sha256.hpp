#pragma once

#include "core/base/bytes.hpp"
#include "core/base/ids.hpp"

#include <memory>

namespace spile::inline base {

/// Return the SHA-256 of `bytes`.
///
/// Source    NIST FIPS 180-4, computed by libcrypto.
[[nodiscard]] Sha256 sha256(ByteView bytes);

/// SHA-256 of bytes that arrive in pieces.
class Sha256Stream {
public:
    Sha256Stream();
    ~Sha256Stream();
    Sha256Stream(Sha256Stream&& other) noexcept;
    Sha256Stream& operator=(Sha256Stream&& other) noexcept;
    Sha256Stream(const Sha256Stream&) = delete;
    Sha256Stream& operator=(const Sha256Stream&) = delete;

    void add(ByteView bytes);
    /// Return the hash of all that was added and start anew.
    [[nodiscard]] Sha256 finish();

private:
    struct Context;
    std::unique_ptr<Context> context_;
};

}  // namespace spile::inline base
