#include "platform/system/file_key_store.hpp"

namespace spile::system {

static constexpr std::size_t fileSize = 2 * KeySeed::size + 1;

static const char* fileName(KeyName name)
{
    switch (name) {
        case KeyName::Device:
            return "device.key";
        case KeyName::Owner:
            return "owner.key";
        case KeyName::NextDevice:
            break;
    }
    return "device.key.next";
}

static tl::unexpected<Error> refuseForm(const Path& path)
{
    return fail(ErrorCode::Damaged, path.string(), {}, "64 hexadecimal digits and a line end");
}

Result<std::optional<KeySeed>> FileKeyStore::load(KeyName name)
{
    const Path path = folder_ / fileName(name);
    auto bytes = readWhole(files_, path, fileSize);
    if (!bytes && bytes.error().code == ErrorCode::NotFound) {
        return std::optional<KeySeed>();
    }
    if (!bytes && bytes.error().code == ErrorCode::TooLarge) {
        return refuseForm(path);
    }
    if (!bytes) {
        return passOn(bytes);
    }
    if (bytes->size() != fileSize || bytes->back() != '\n') {
        return refuseForm(path);
    }
    const auto seed = KeySeed::fromHex(asText(*bytes).substr(0, fileSize - 1));
    if (!seed) {
        return refuseForm(path);
    }
    return seed;
}

Result<void> FileKeyStore::save(KeyName name, const KeySeed& seed)
{
    const Path path = folder_ / fileName(name);
    if (files_.exists(path)) {
        return fail(ErrorCode::Conflict, path.string());
    }
    if (auto done = files_.makeFolder(folder_); !done) {
        return done;
    }
    return writeWholePrivate(files_, path, asBytes(seed.hex() + '\n'));
}

Result<void> FileKeyStore::turnToNext()
{
    const Path next = folder_ / fileName(KeyName::NextDevice);
    if (!files_.exists(next)) {
        return fail(ErrorCode::NotFound, next.string());
    }
    if (auto done = files_.rename(next, folder_ / fileName(KeyName::Device)); !done) {
        return done;
    }
    return files_.syncFolder(folder_);
}

}  // namespace spile::system
