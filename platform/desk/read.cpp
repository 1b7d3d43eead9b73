// read: the codes in pictures.
#include "core/cellar/join_code.hpp"
#include "core/cellar/owner_key_text.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/picture_codes.hpp"
#include "platform/desk/rows.hpp"

namespace spile::desk {

using nlohmann::json;

namespace {

std::string nameOf(scan::Format format)
{
    switch (format) {
        case scan::Format::QrCode:
            return "QRCode";
        case scan::Format::DataMatrix:
            return "DataMatrix";
        case scan::Format::Code128:
            return "Code128";
    }
    return "";
}

// A secret is not for a terminal, which keeps what it showed.
std::string shownText(const scan::Code& code)
{
    return cellar::isOwnerSymbol(code.text) ? "S3 (not shown)" : code.text;
}

const char* whatItIs(const scan::Code& code)
{
    if (scan::ownLabel(code)) {
        return "a barrel's label";
    }
    if (cellar::parseJoinSymbol(code.text)) {
        return "a device that asks to be admitted";
    }
    return cellar::isOwnerSymbol(code.text) ? "an owner's key" : "";
}

}  // namespace

int read(Session& session, const std::vector<std::string>& images)
{
    json answers = json::array();
    std::vector<std::vector<std::string>> lines;
    int exit = Done;
    for (const std::string& name : images) {
        const auto codes = codesIn(session.files(), name);
        if (!codes) {
            Session::remark("spile-desk: " + name + ": " + worded(codes.error()));
            answers.push_back(
                {{"file", name}, {"codes", json::array()}, {"error", worded(codes.error())}});
            exit = exitOf(codes.error());
            continue;
        }
        json list = json::array();
        for (const scan::Code& code : *codes) {
            const bool ours = scan::ownLabel(code).has_value();
            const std::string text = shownText(code);
            list.push_back({{"text", text}, {"format", nameOf(code.format)}, {"ours", ours}});
            lines.push_back({name, nameOf(code.format), text, whatItIs(code)});
        }
        answers.push_back({{"file", name}, {"codes", list}});
        if (codes->empty()) {
            lines.push_back({name, "no code found"});
        }
    }
    session.answer(answers, table(lines));
    return exit;
}

}  // namespace spile::desk
