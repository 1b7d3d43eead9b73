#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace spile::support {

/// A validator of bags on disk, which shares no code with what writes them: return what is wrong
/// with the bag in `folder` by RFC 8493, a line each; empty if it is complete and valid.
///
/// Demands besides that manifests are of SHA-256, that there is a Payload-Oxum, and that nothing
/// has to be fetched.
[[nodiscard]] std::vector<std::string> faultsOfBag(const std::filesystem::path& folder);

}  // namespace spile::support
