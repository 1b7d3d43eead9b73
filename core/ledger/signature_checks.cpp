#include "core/ledger/signature_checks.hpp"

#include "core/ledger/entry.hpp"

#include <algorithm>
#include <thread>
#include <utility>

namespace spile::ledger {

namespace {

constexpr std::size_t batchSize = 256;  // about 10 ms of one core

Result<void> checkAll(const std::vector<SignatureChecks::One>& batch)
{
    const auto bad =
        std::find_if_not(batch.begin(), batch.end(), [](const SignatureChecks::One& one) {
            return verify(one.key, signedMessage(one.cellar, one.id), one.signature);
        });
    return bad == batch.end()
               ? Result<void>()
               : fail(ErrorCode::Damaged, "day file",
                      "signature of record " + placeOf(bad->device, bad->seq), "copy it again");
}

}  // namespace

std::string placeOf(const DeviceId& device, std::uint64_t seq)
{
    return device.hex().substr(0, 8) + "/" + std::to_string(seq);
}

Result<void> SignatureChecks::add(const One& one)
{
    batch_.push_back(one);
    if (batch_.size() < batchSize) {
        return {};
    }
    send();
    static const std::size_t cores = std::max(1U, std::thread::hardware_concurrency());
    return sent_.size() > cores ? awaitOldest() : Result<void>();
}

// Deferred where the system has no thread to give: it is then checked when it is waited for.
void SignatureChecks::send()
{
    sent_.push_back(std::async(std::launch::async | std::launch::deferred,
                               [batch = std::exchange(batch_, {})] { return checkAll(batch); }));
}

Result<void> SignatureChecks::awaitOldest()
{
    auto checked = sent_.front().get();
    sent_.pop_front();
    return checked;
}

Result<void> SignatureChecks::finish()
{
    send();
    while (!sent_.empty()) {
        SPILE_TRY(awaitOldest());
    }
    return {};
}

}  // namespace spile::ledger
