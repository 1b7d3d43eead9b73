#include "tests/support/faulty_file_system.hpp"

#include <numeric>
#include <tuple>
#include <utility>

namespace spile::support {

namespace {

class FaultyInput final : public InputFile {
public:
    FaultyInput(FaultyFileSystem& owner, std::unique_ptr<InputFile> inner, Path path)
        : owner_(owner), inner_(std::move(inner)), path_(std::move(path))
    {
    }
    [[nodiscard]] std::uint64_t size() const override { return inner_->size(); }
    [[nodiscard]] Result<void> readAt(std::uint64_t offset, std::span<std::uint8_t> into) override
    {
        if (auto admitted = owner_.admit(FileCall::Read, path_); !admitted) {
            return admitted;
        }
        return inner_->readAt(offset, into);
    }

private:
    FaultyFileSystem& owner_;
    std::unique_ptr<InputFile> inner_;
    Path path_;
};

class FaultyOutput final : public OutputFile {
public:
    FaultyOutput(FaultyFileSystem& owner, std::unique_ptr<OutputFile> inner, Path path)
        : owner_(owner), inner_(std::move(inner)), path_(std::move(path))
    {
    }
    [[nodiscard]] Result<void> append(ByteView bytes) override
    {
        if (auto admitted = owner_.admit(FileCall::Append, path_); !admitted) {
            std::ignore = inner_->append(bytes.first(bytes.size() / 2));
            return admitted;
        }
        return inner_->append(bytes);
    }
    [[nodiscard]] Result<void> sync() override
    {
        if (auto admitted = owner_.admit(FileCall::Sync, path_); !admitted) {
            return admitted;
        }
        return inner_->sync();
    }

private:
    FaultyFileSystem& owner_;
    std::unique_ptr<OutputFile> inner_;
    Path path_;
};

}  // namespace

void FaultyFileSystem::failAt(const Fault& fault)
{
    calls_ = {};
    fault_ = fault;
}

void FaultyFileSystem::failNever()
{
    calls_ = {};
    fault_.reset();
}

std::uint64_t FaultyFileSystem::calls(std::optional<FileCall> call) const
{
    return call ? calls_.at(static_cast<std::size_t>(*call))
                : std::accumulate(calls_.begin(), calls_.end(), std::uint64_t{0});
}

Result<void> FaultyFileSystem::admit(FileCall call, const Path& path)
{
    ++calls_.at(static_cast<std::size_t>(call));
    if (call == FileCall::Append && full_ && full_()) {
        return fail(ErrorCode::StorageFull, path.string(), "refused by the test");
    }
    if (!fault_ || (fault_->call && *fault_->call != call)) {
        return {};
    }
    const std::uint64_t count = calls(fault_->call);
    if (count == fault_->at || (fault_->lasting && count > fault_->at)) {
        return fail(fault_->code, path.string(), "refused by the test");
    }
    return {};
}

Result<std::unique_ptr<InputFile>> FaultyFileSystem::open(const Path& path)
{
    if (auto admitted = admit(FileCall::Open, path); !admitted) {
        return passOn(admitted);
    }
    auto file = inner_.open(path);
    if (!file) {
        return file;
    }
    return std::make_unique<FaultyInput>(*this, std::move(*file), path);
}

Result<std::unique_ptr<OutputFile>> FaultyFileSystem::create(const Path& path)
{
    if (auto admitted = admit(FileCall::Create, path); !admitted) {
        return passOn(admitted);
    }
    auto file = inner_.create(path);
    if (!file) {
        return file;
    }
    return std::make_unique<FaultyOutput>(*this, std::move(*file), path);
}

Result<std::unique_ptr<OutputFile>> FaultyFileSystem::createPrivate(const Path& path)
{
    if (auto admitted = admit(FileCall::Create, path); !admitted) {
        return passOn(admitted);
    }
    auto file = inner_.createPrivate(path);
    if (!file) {
        return file;
    }
    return std::make_unique<FaultyOutput>(*this, std::move(*file), path);
}

Result<void> FaultyFileSystem::rename(const Path& from, const Path& to)
{
    auto admitted = admit(FileCall::Rename, from);
    return admitted ? inner_.rename(from, to) : admitted;
}

Result<void> FaultyFileSystem::remove(const Path& path)
{
    auto admitted = admit(FileCall::Remove, path);
    return admitted ? inner_.remove(path) : admitted;
}

Result<void> FaultyFileSystem::makeFolder(const Path& path)
{
    auto admitted = admit(FileCall::MakeFolder, path);
    return admitted ? inner_.makeFolder(path) : admitted;
}

Result<void> FaultyFileSystem::syncFolder(const Path& path)
{
    auto admitted = admit(FileCall::SyncFolder, path);
    return admitted ? inner_.syncFolder(path) : admitted;
}

Result<std::vector<std::string>> FaultyFileSystem::list(const Path& folder)
{
    if (auto admitted = admit(FileCall::List, folder); !admitted) {
        return passOn(admitted);
    }
    return inner_.list(folder);
}

Result<std::unique_ptr<FileLock>> FaultyFileSystem::lock(const Path& path,
                                                         const std::string& holder)
{
    if (auto admitted = admit(FileCall::Lock, path); !admitted) {
        return passOn(admitted);
    }
    return inner_.lock(path, holder);
}

}  // namespace spile::support
