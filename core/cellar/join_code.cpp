#include "core/cellar/join_code.hpp"

#include "core/cellar/code_text.hpp"
#include "core/scan/barrel_code.hpp"

namespace spile::cellar {

namespace {

constexpr std::string_view symbolPrefix = "S2";
constexpr std::size_t markLength = 4;

}  // namespace

std::string joinCode(const DeviceId& device) { return inGroups(codeText(device.bytes())); }

Result<DeviceId> parseJoinCode(std::string_view typed)
{
    const auto bytes = parseCodeText(scan::tidied(typed));
    if (!bytes) {
        return fail(ErrorCode::Malformed, "join code", std::string(typed),
                    "the 28 characters that the device shows");
    }
    return DeviceId(*bytes);
}

std::string joinSymbolText(const JoinSymbol& symbol)
{
    return std::string(symbolPrefix) + symbol.cellarMark +
           codeText(symbol.device.bytes(), symbol.cellarMark);
}

std::optional<JoinSymbol> parseJoinSymbol(std::string_view text)
{
    if (!text.starts_with(symbolPrefix) || text.size() < symbolPrefix.size() + markLength) {
        return std::nullopt;
    }
    text.remove_prefix(symbolPrefix.size());
    const std::string_view mark = text.substr(0, markLength);
    const auto bytes = parseCodeText(text.substr(markLength), mark);
    return bytes ? std::optional(JoinSymbol{std::string(mark), DeviceId(*bytes)}) : std::nullopt;
}

}  // namespace spile::cellar
