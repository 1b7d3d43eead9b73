// What a loss of power leaves of the calls that a RecordedDisk noted.
#include "core/base/random.hpp"
#include "core/base/simulated.hpp"
#include "tests/support/recorded_disk.hpp"

#include <fstream>
#include <iterator>
#include <map>

namespace spile::support {

namespace {

constexpr std::size_t sector = 512;

// A change of a file that no sync has come after.
struct Pending {
    bool truncates = false;
    std::uint64_t offset = 0;
    ByteView bytes;
};

void write(Bytes& content, std::uint64_t offset, ByteView bytes)
{
    if (content.size() < offset + bytes.size()) {
        content.resize(offset + bytes.size());
    }
    std::copy(bytes.begin(), bytes.end(), content.begin() + static_cast<std::ptrdiff_t>(offset));
}

void apply(Bytes& content, const Pending& change)
{
    if (change.truncates) {
        content.resize(change.offset);
    } else {
        write(content, change.offset, change.bytes);
    }
}

struct File {
    Bytes durable;
    std::vector<Pending> pending;
};

// The names of a disk and the files that they stand for, as they are now and as they last.
class Disk {
public:
    explicit Disk(const Path& from)
    {
        for (const auto& found : std::filesystem::recursive_directory_iterator(from)) {
            if (found.is_regular_file()) {
                const std::string name = found.path().lexically_relative(from).generic_string();
                std::ifstream in(found.path(), std::ios::binary);
                auto file = std::make_shared<File>();
                file->durable.assign(std::istreambuf_iterator<char>(in), {});
                now_[name] = file;
                durable_[name] = file;
            }
        }
    }

    void follow(const DiskCall& call, bool lying)
    {
        using Kind = DiskCall::Kind;
        switch (call.kind) {
            case Kind::Create:
                now_[call.path] = std::make_shared<File>();
                break;
            case Kind::Write:
                now_[call.path]->pending.push_back({false, call.offset, call.bytes});
                break;
            case Kind::Truncate:
                now_[call.path]->pending.push_back({true, call.offset, {}});
                break;
            case Kind::Sync:
                if (!lying) {
                    sync(call);
                }
                break;
            case Kind::Remove:
                now_.erase(call.path);
                break;
            case Kind::Rename:
                now_[call.to] = now_[call.path];
                now_.erase(call.path);
                break;
            case Kind::SyncFolder:
                if (!lying) {
                    syncFolder(call.path == "." ? "" : call.path + "/");
                }
                break;
            case Kind::Acknowledge:
                break;
        }
    }

    void leave(const Crash& crash, const Path& to) const
    {
        SeededRandom random(crash.seed);
        const bool names = crash.leaves == Leaves::All ||
                           (crash.leaves != Leaves::Nothing && random.below(2) == 1);
        for (const auto& [name, file] : names ? now_ : durable_) {
            Bytes content = file->durable;
            const std::size_t kept =
                crash.leaves == Leaves::Beginning && !file->pending.empty()
                    ? random.below(static_cast<std::uint32_t>(file->pending.size() + 1))
                    : 0;
            for (std::size_t i = 0; i < file->pending.size(); ++i) {
                leaveOne(crash.leaves, i, kept, file->pending[i], random, content);
            }
            std::filesystem::create_directories((to / name).parent_path());
            std::ofstream out(to / name, std::ios::binary);
            out.write(reinterpret_cast<const char*>(content.data()),
                      static_cast<std::streamsize>(content.size()));
        }
    }

private:
    void sync(const DiskCall& call)
    {
        File& file = *now_[call.path];
        for (const Pending& change : file.pending) {
            apply(file.durable, change);
        }
        file.pending.clear();
        if (call.bySqlite) {  // which syncs the folder of what it makes
            durable_[call.path] = now_[call.path];
        }
    }

    void syncFolder(const std::string& folder)
    {
        const auto inFolder = [&](const std::string& name) {
            return name.starts_with(folder) && name.find('/', folder.size()) == std::string::npos;
        };
        std::erase_if(durable_, [&](const auto& item) { return inFolder(item.first); });
        for (const auto& [name, file] : now_) {
            if (inFolder(name)) {
                durable_[name] = file;
            }
        }
    }

    static void leaveOne(Leaves leaves, std::size_t i, std::size_t kept, const Pending& change,
                         SeededRandom& random, Bytes& content)
    {
        const bool begins = leaves == Leaves::Beginning && i < kept;
        if (leaves == Leaves::All || begins ||
            (change.truncates && leaves == Leaves::Anything && random.below(2) == 1)) {
            apply(content, change);
        } else if (!change.truncates && leaves == Leaves::Beginning && i == kept) {
            const auto sectors = static_cast<std::uint32_t>(change.bytes.size() / sector + 1);
            write(
                content, change.offset,
                change.bytes.first(std::min(change.bytes.size(), sector * random.below(sectors))));
        } else if (!change.truncates && leaves == Leaves::Anything) {
            for (std::size_t at = 0; at < change.bytes.size(); at += sector) {
                if (random.below(2) == 1) {
                    const std::size_t size = std::min(sector, change.bytes.size() - at);
                    write(content, change.offset + at, change.bytes.subspan(at, size));
                }
            }
        }
    }

    std::map<std::string, std::shared_ptr<File>> now_, durable_;
};

}  // namespace

void writeCrashed(const std::vector<DiskCall>& calls, const Crash& crash, const Path& from,
                  const Path& to)
{
    Disk disk(from);
    for (std::size_t i = 0; i < crash.after; ++i) {
        disk.follow(calls[i], crash.lyingDisk);
    }
    disk.leave(crash, to);
}

}  // namespace spile::support
