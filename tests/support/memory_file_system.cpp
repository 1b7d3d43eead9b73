#include "tests/support/memory_file_system.hpp"

#include <algorithm>
#include <utility>

namespace spile::support {

using NodePtr = std::shared_ptr<MemoryFileSystem::Node>;
using Names = std::map<std::string, NodePtr>;

struct MemoryFileSystem::Node {
    bool isFolder = false;
    bool isPrivate = false;
    Bytes bytes, lastingBytes;  // of a file
    Names names, lastingNames;  // of a folder
    std::weak_ptr<FileLock> lock;
    std::string holder;
};

namespace {

class MemoryInput final : public InputFile {
public:
    MemoryInput(NodePtr node, Path path) : node_(std::move(node)), path_(std::move(path)) {}
    [[nodiscard]] std::uint64_t size() const override { return node_->bytes.size(); }
    [[nodiscard]] Result<void> readAt(std::uint64_t offset, std::span<std::uint8_t> into) override
    {
        if (offset > size() || into.size() > size() - offset) {
            return fail(ErrorCode::Damaged, path_.string(), "ends too early");
        }
        std::copy_n(node_->bytes.begin() + static_cast<std::ptrdiff_t>(offset), into.size(),
                    into.begin());
        return {};
    }

private:
    NodePtr node_;
    Path path_;
};

class MemoryOutput final : public OutputFile {
public:
    explicit MemoryOutput(NodePtr node) : node_(std::move(node)) {}
    [[nodiscard]] Result<void> append(ByteView bytes) override
    {
        node_->bytes.insert(node_->bytes.end(), bytes.begin(), bytes.end());
        return {};
    }
    [[nodiscard]] Result<void> sync() override
    {
        node_->lastingBytes = node_->bytes;
        return {};
    }

private:
    NodePtr node_;
};

// Held by the caller through a pointer that shares ownership with nobody; the node only watches.
class MemoryLock final : public FileLock {
public:
    explicit MemoryLock(std::shared_ptr<FileLock> held) : held_(std::move(held)) {}

private:
    std::shared_ptr<FileLock> held_;
};

}  // namespace

static NodePtr find(const NodePtr& root, const Path& path)
{
    NodePtr node = root;
    for (const Path& part : path.lexically_normal().relative_path()) {
        if (part.empty() || part == ".") {
            continue;
        }
        const auto next = node->names.find(part.string());
        if (next == node->names.end()) {
            return nullptr;
        }
        node = next->second;
    }
    return node;
}

// The folder that `path` is in; null if there is none.
static NodePtr findParent(const NodePtr& root, const Path& path)
{
    NodePtr parent = find(root, path.lexically_normal().parent_path());
    return parent && parent->isFolder ? parent : nullptr;
}

static Result<NodePtr> makeFile(const NodePtr& root, const Path& path)
{
    const NodePtr parent = findParent(root, path);
    if (!parent) {
        return fail(ErrorCode::NotFound, path.string());
    }
    const auto [place, isNew] = parent->names.emplace(path.filename().string(), nullptr);
    if (!isNew) {
        return fail(ErrorCode::Conflict, path.string());
    }
    place->second = std::make_shared<MemoryFileSystem::Node>();
    return place->second;
}

MemoryFileSystem::MemoryFileSystem() : root_(std::make_shared<Node>()) { root_->isFolder = true; }

Result<std::unique_ptr<InputFile>> MemoryFileSystem::open(const Path& path)
{
    NodePtr node = find(root_, path);
    if (!node) {
        return fail(ErrorCode::NotFound, path.string());
    }
    if (node->isFolder) {
        return fail(ErrorCode::Storage, path.string(), "not a plain file");
    }
    return std::make_unique<MemoryInput>(std::move(node), path);
}

Result<std::unique_ptr<OutputFile>> MemoryFileSystem::create(const Path& path)
{
    auto node = makeFile(root_, path);
    if (!node) {
        return passOn(node);
    }
    return std::make_unique<MemoryOutput>(std::move(*node));
}

Result<std::unique_ptr<OutputFile>> MemoryFileSystem::createPrivate(const Path& path)
{
    auto file = create(path);
    if (file) {
        find(root_, path)->isPrivate = true;
    }
    return file;
}

Result<void> MemoryFileSystem::rename(const Path& from, const Path& to)
{
    const NodePtr node = find(root_, from);
    const NodePtr target = findParent(root_, to);
    if (!node || !target) {
        return fail(ErrorCode::NotFound, (node ? to : from).string());
    }
    const auto existing = target->names.find(to.filename().string());
    if (existing != target->names.end() && existing->second->isFolder) {
        return fail(ErrorCode::Conflict, to.string());
    }
    target->names[to.filename().string()] = node;
    if (from.lexically_normal() != to.lexically_normal()) {
        findParent(root_, from)->names.erase(from.filename().string());
    }
    return {};
}

Result<void> MemoryFileSystem::remove(const Path& path)
{
    const NodePtr node = find(root_, path);
    if (!node || node == root_) {
        return fail(ErrorCode::NotFound, path.string());
    }
    if (!node->names.empty()) {
        return fail(ErrorCode::Conflict, path.string());
    }
    findParent(root_, path)->names.erase(path.filename().string());
    return {};
}

Result<void> MemoryFileSystem::makeFolder(const Path& path)
{
    NodePtr node = root_;
    for (const Path& part : path.lexically_normal().relative_path()) {
        if (part.empty() || part == ".") {
            continue;
        }
        NodePtr& next = node->names[part.string()];
        if (!next) {
            next = std::make_shared<Node>();
            next->isFolder = true;
        }
        if (!next->isFolder) {
            return fail(ErrorCode::Storage, path.string(), "a file has that name");
        }
        node = next;
    }
    return {};
}

Result<void> MemoryFileSystem::syncFolder(const Path& path)
{
    const NodePtr folder = find(root_, path);
    if (!folder || !folder->isFolder) {
        return fail(ErrorCode::NotFound, path.string());
    }
    folder->lastingNames = folder->names;
    return {};
}

bool MemoryFileSystem::exists(const Path& path) { return find(root_, path) != nullptr; }

Result<std::vector<std::string>> MemoryFileSystem::list(const Path& folder)
{
    const NodePtr node = find(root_, folder);
    if (!node || !node->isFolder) {
        return fail(ErrorCode::NotFound, folder.string());
    }
    std::vector<std::string> names;
    for (const auto& [name, child] : node->names) {
        names.push_back(name);
    }
    return names;
}

Result<std::unique_ptr<FileLock>> MemoryFileSystem::lock(const Path& path,
                                                         const std::string& holder)
{
    NodePtr node = find(root_, path);
    if (!node) {
        auto made = makeFile(root_, path);
        if (!made) {
            return passOn(made);
        }
        node = *made;
    }
    if (!node->lock.expired()) {
        return fail(ErrorCode::Locked, path.string(), node->holder, "close it there first");
    }
    auto held = std::make_shared<FileLock>();
    node->lock = held;
    node->holder = holder;
    node->bytes.assign(holder.begin(), holder.end());
    return std::make_unique<MemoryLock>(std::move(held));
}

static void restore(MemoryFileSystem::Node& node)
{
    node.bytes = node.lastingBytes;
    node.names = node.lastingNames;
    node.lock.reset();
    for (const auto& [name, child] : node.names) {
        restore(*child);
    }
}

void MemoryFileSystem::loseUnsynced() { restore(*root_); }

bool MemoryFileSystem::isPrivate(const Path& path) const
{
    const NodePtr node = find(root_, path);
    return node && node->isPrivate;
}

}  // namespace spile::support
