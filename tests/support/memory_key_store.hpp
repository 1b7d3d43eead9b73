#pragma once

#include "core/base/key_store.hpp"

#include <map>

namespace spile::support {

/// Keys that are gone with the store.
class MemoryKeyStore final : public KeyStore {
public:
    [[nodiscard]] Result<std::optional<KeySeed>> load(KeyName name) override
    {
        const auto found = keys_.find(name);
        return found == keys_.end() ? std::optional<KeySeed>() : found->second;
    }
    [[nodiscard]] Result<void> save(KeyName name, const KeySeed& seed) override
    {
        if (!keys_.emplace(name, seed).second) {
            return fail(ErrorCode::Conflict, "key");
        }
        return {};
    }
    [[nodiscard]] Result<void> turnToNext() override
    {
        const auto next = keys_.find(KeyName::NextDevice);
        if (next == keys_.end()) {
            return fail(ErrorCode::NotFound, "key");
        }
        keys_[KeyName::Device] = next->second;
        keys_.erase(next);
        return {};
    }

private:
    std::map<KeyName, KeySeed> keys_;
};

}  // namespace spile::support
