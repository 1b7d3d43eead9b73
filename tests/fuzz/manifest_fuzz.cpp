// The parts of a day file apart from its container: manifests, header, signature.
#include "core/ledger/bundle_format.hpp"
#include "tests/fuzz/input.hpp"

#include <algorithm>

namespace {

using namespace spile;
using namespace spile::ledger;
using fuzz::Input;
using fuzz::require;

// The lines may stand in any order and the hashes in large letters; nothing else is free.
void readManifestText(std::string_view text)
{
    const auto manifest = readManifest(text, "manifest");
    if (!manifest) {
        return;
    }
    const std::string written = writeManifest(*manifest);
    require(written.size() == text.size(), "a manifest of another size is written");
    require(readManifest(written, "manifest") == manifest, "a manifest is read again as another");
    const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
    require(manifest->size() == lines, "a manifest of more lines than paths");
}

// Unknown keys are passed over, so the bytes may differ; what is known may not.
void readHeader(ByteView bytes)
{
    const auto header = decodeHeader(bytes);
    if (!header) {
        return;
    }
    const Bytes written = encodeHeader(*header);
    require(written.size() <= bytes.size(), "a header is written longer than it was");
    require(decodeHeader(written) == header, "a header is read again as another");
}

void readSignature(ByteView bytes)
{
    const auto signature = decodeSignature(bytes);
    if (!signature) {
        return;
    }
    const Bytes written = encodeSignature(*signature);
    require(std::equal(bytes.begin(), bytes.end(), written.begin(), written.end()),
            "a signature is written as other bytes");
    require(!verifyBundle(*signature, Sha256()), "it signs what nobody signed");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Input input(data, size);
    switch (input.byte() % 3U) {
        case 0:
            readManifestText(asText(input.rest()));
            break;
        case 1:
            readHeader(input.rest());
            break;
        default:
            readSignature(input.rest());
            break;
    }
    return 0;
}
