#pragma once

#include "core/base/file_system.hpp"

namespace spile::support {

/// The real disk without its syncs: for tests of what is stored, not of whether it lasts.
class QuickFileSystem final : public FileSystem {
public:
    explicit QuickFileSystem(FileSystem& inner) : inner_(inner) {}

    [[nodiscard]] Result<std::unique_ptr<InputFile>> open(const Path& path) override
    {
        return inner_.open(path);
    }
    [[nodiscard]] Result<std::unique_ptr<OutputFile>> create(const Path& path) override
    {
        return unsynced(inner_.create(path));
    }
    [[nodiscard]] Result<std::unique_ptr<OutputFile>> createPrivate(const Path& path) override
    {
        return unsynced(inner_.createPrivate(path));
    }
    [[nodiscard]] Result<void> rename(const Path& from, const Path& to) override
    {
        return inner_.rename(from, to);
    }
    [[nodiscard]] Result<void> remove(const Path& path) override { return inner_.remove(path); }
    [[nodiscard]] Result<void> makeFolder(const Path& path) override
    {
        return inner_.makeFolder(path);
    }
    [[nodiscard]] Result<void> syncFolder(const Path&) override { return {}; }
    [[nodiscard]] bool exists(const Path& path) override { return inner_.exists(path); }
    [[nodiscard]] Result<std::vector<std::string>> list(const Path& folder) override
    {
        return inner_.list(folder);
    }
    [[nodiscard]] Result<std::unique_ptr<FileLock>> lock(const Path& path,
                                                         const std::string& holder) override
    {
        return inner_.lock(path, holder);
    }

private:
    class Unsynced final : public OutputFile {
    public:
        explicit Unsynced(std::unique_ptr<OutputFile> inner) : inner_(std::move(inner)) {}
        [[nodiscard]] Result<void> append(ByteView bytes) override { return inner_->append(bytes); }
        [[nodiscard]] Result<void> sync() override { return {}; }

    private:
        std::unique_ptr<OutputFile> inner_;
    };
    static Result<std::unique_ptr<OutputFile>> unsynced(Result<std::unique_ptr<OutputFile>> file)
    {
        if (!file) {
            return file;
        }
        return std::make_unique<Unsynced>(std::move(*file));
    }

    FileSystem& inner_;
};

}  // namespace spile::support
