// Source: RFC 8493 (BagIt 1.0), sections 2.1.1 (bagit.txt), 2.1.3 (payload manifest), 2.2.1 (tag
// manifest), 2.2.2 (bag-info.txt), 2.2.3 (fetch.txt), 2.3 (encoding) and 3 (complete and valid);
// from memory.
#include "tests/reference/bagit.hpp"

#include "core/base/sha256.hpp"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <map>
#include <optional>
#include <set>
#include <string_view>

namespace spile::support {

namespace {

using Files = std::map<std::string, std::string>;

Files filesIn(const std::filesystem::path& folder)
{
    Files files;
    for (const auto& item : std::filesystem::recursive_directory_iterator(folder)) {
        if (item.is_regular_file()) {
            std::ifstream in(item.path(), std::ios::binary);
            files[item.path().lexically_relative(folder).generic_string()] =
                std::string(std::istreambuf_iterator<char>(in), {});
        }
    }
    return files;
}

// Lines end with LF, CR or both.
std::vector<std::string> linesOf(std::string_view text)
{
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = text.find_first_of("\r\n");
        lines.emplace_back(text.substr(0, end));
        if (end == std::string_view::npos) {
            break;
        }
        text.remove_prefix(end + (text.substr(end, 2) == "\r\n" ? 2 : 1));
    }
    return lines;
}

// In a manifest CR, LF and "%" stand as %0D, %0A and %25, and no other character is written so.
std::optional<std::string> decodedPath(std::string_view path)
{
    std::string decoded;
    for (std::size_t i = 0; i < path.size(); ++i) {
        if (path[i] != '%') {
            decoded += path[i];
            continue;
        }
        std::string code(path.substr(i, 3));
        std::transform(code.begin(), code.end(), code.begin(),
                       [](char c) { return c >= 'a' && c <= 'f' ? static_cast<char>(c - 32) : c; });
        if (code != "%0D" && code != "%0A" && code != "%25") {
            return std::nullopt;
        }
        decoded += code == "%0D" ? '\r' : code == "%0A" ? '\n' : '%';
        i += 2;
    }
    return decoded;
}

bool staysInside(const std::filesystem::path& path)
{
    return !path.empty() && path.is_relative() &&
           std::none_of(path.begin(), path.end(), [](const std::filesystem::path& part) {
               return part == ".." || part == "." || part == "~";
           });
}

class Validator {
public:
    explicit Validator(Files files) : files_(std::move(files)) {}

    std::vector<std::string> run()
    {
        declaration();
        payload();
        tags();
        oxum();
        if (files_.contains("fetch.txt")) {
            wrong("something has to be fetched");
        }
        return faults_;
    }

private:
    void wrong(const std::string& what) { faults_.push_back(what); }

    void declaration()
    {
        const auto lines = linesOf(content("bagit.txt"));
        if (lines !=
            std::vector<std::string>{"BagIt-Version: 1.0", "Tag-File-Character-Encoding: UTF-8"}) {
            wrong("bagit.txt does not declare a bag of version 1.0 in UTF-8");
        }
    }

    // Every payload file is listed, each once, with its checksum.
    void payload()
    {
        const std::set<std::string> listed = checked("manifest-sha256.txt");
        for (const auto& [path, bytes] : files_) {
            if (path.starts_with("data/") && !listed.contains(path)) {
                wrong(path + " is not listed");
            }
        }
        for (const std::string& path : listed) {
            if (!path.starts_with("data/")) {
                wrong(path + " is no payload");
            }
        }
    }

    // The tag manifest lists the payload manifest at least, and no tag manifest.
    void tags()
    {
        const std::set<std::string> listed = checked("tagmanifest-sha256.txt");
        if (!listed.contains("manifest-sha256.txt")) {
            wrong("the tag manifest does not list the payload's");
        }
        for (const std::string& path : listed) {
            if (path.starts_with("data/") || path.starts_with("tagmanifest-")) {
                wrong(path + " is no tag file");
            }
        }
    }

    void oxum()
    {
        std::size_t bytes = 0;
        std::size_t count = 0;
        for (const auto& [path, content] : files_) {
            if (path.starts_with("data/")) {
                bytes += content.size();
                ++count;
            }
        }
        const std::string right =
            "Payload-Oxum: " + std::to_string(bytes) + "." + std::to_string(count);
        const auto lines = linesOf(content("bag-info.txt"));
        if (std::count(lines.begin(), lines.end(), right) != 1) {
            wrong("bag-info.txt does not say " + right);
        }
        for (const std::string& line : lines) {
            if (line.find(": ") == std::string::npos) {
                wrong("bag-info.txt has a line without label and value");
            }
        }
    }

    // The paths of a manifest whose checksums hold.
    std::set<std::string> checked(const std::string& manifest)
    {
        std::set<std::string> listed;
        for (const std::string& line : linesOf(content(manifest))) {
            const std::size_t space = line.find_first_of(" \t");
            const std::size_t start = line.find_first_not_of(" \t", space);
            const auto path = start == std::string::npos
                                  ? std::nullopt
                                  : decodedPath(std::string_view(line).substr(start));
            if (!path || !staysInside(*path)) {
                wrong(manifest + " has a bad line: " + line);
            } else if (!listed.insert(*path).second) {
                wrong(*path + " is listed twice");
            } else {
                compare(*path, line.substr(0, space));
            }
        }
        return listed;
    }

    void compare(const std::string& path, std::string_view hash)
    {
        const auto file = files_.find(path);
        if (file == files_.end()) {
            wrong(path + " is missing");
        } else if (Sha256::fromHex(hash) != sha256(asBytes(file->second))) {
            wrong(path + " has another checksum");
        }
    }

    std::string content(const std::string& path)
    {
        const auto file = files_.find(path);
        if (file == files_.end()) {
            wrong(path + " is missing");
            return {};
        }
        return file->second;
    }

    Files files_;
    std::vector<std::string> faults_;
};

}  // namespace

std::vector<std::string> faultsOfBag(const std::filesystem::path& folder)
{
    return Validator(filesIn(folder)).run();
}

}  // namespace spile::support
