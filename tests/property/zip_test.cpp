#include "core/ledger/zip.hpp"

#include "core/ledger/crc32.hpp"
#include "tests/support/zip_archives.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::ledger {

using support::unzipped;
using support::ZipContents;
using support::zipOf;

// Members in folders; their numbers keep the names apart.
static rc::Gen<ZipContents> anyContents()
{
    const auto character = rc::gen::elementOf(std::string("abcXYZ019._-"));
    const auto segment =
        rc::gen::resize(20, rc::gen::nonEmpty(rc::gen::container<std::string>(character)));
    const auto member =
        rc::gen::pair(rc::gen::resize(4, rc::gen::container<std::vector<std::string>>(segment)),
                      rc::gen::arbitrary<std::string>());
    return rc::gen::map(
        rc::gen::container<std::vector<std::pair<std::vector<std::string>, std::string>>>(member),
        [](const auto& drawn) {
            ZipContents contents;
            for (const auto& [segments, text] : drawn) {
                std::string name = "m" + std::to_string(contents.size());
                for (const std::string& part : segments) {
                    name += "/p" + part;
                }
                contents.emplace_back(name, text);
            }
            return contents;
        });
}

RC_GTEST_PROP(Zip, RoundTrips, ())
{
    const ZipContents contents = *anyContents();
    RC_ASSERT(unzipped(zipOf(contents)) == contents);
}

RC_GTEST_PROP(Zip, NeverReadsADamagedArchiveAsAnotherOne, ())
{
    const ZipContents contents = *rc::gen::nonEmpty(anyContents());
    Bytes archive = zipOf(contents);
    const auto size = static_cast<std::ptrdiff_t>(archive.size());
    const std::ptrdiff_t at = *rc::gen::inRange<std::ptrdiff_t>(0, size);
    const std::ptrdiff_t end = *rc::gen::inRange<std::ptrdiff_t>(at, size + 1);
    const Bytes inserted = *rc::gen::arbitrary<Bytes>();
    archive.erase(archive.begin() + at, archive.begin() + end);
    archive.insert(archive.begin() + at, inserted.begin(), inserted.end());
    const auto read = unzipped(archive);
    // Two pairs of parentheses: within one, rapidcheck evaluates both sides of ||.
    RC_ASSERT((!read.has_value() || archive == zipOf(contents)));
}

RC_GTEST_PROP(Zip, AnswersAnyBytes, ())
{
    // Ends like an archive, so that more than the end record is looked at.
    Bytes bytes = *rc::gen::arbitrary<Bytes>();
    const auto members = *rc::gen::arbitrary<std::uint16_t>();
    const auto start = *rc::gen::inRange<std::size_t>(0, bytes.size() + 1);
    const Bytes end = encodeEnd({members, start, bytes.size() - start});
    bytes.insert(bytes.end(), end.begin(), end.end());
    const auto read = unzipped(bytes);
    RC_ASSERT((!read.has_value() || (read->empty() && members == 0)));
}

RC_GTEST_PROP(Crc32, IsTheSameInPieces, ())
{
    const Bytes bytes = *rc::gen::arbitrary<Bytes>();
    const auto cut = *rc::gen::inRange<std::size_t>(0, bytes.size() + 1);
    Crc32 crc;
    crc.add(ByteView(bytes).first(cut));
    crc.add(ByteView(bytes).subspan(cut));
    RC_ASSERT(crc.value() == crc32(bytes));
}

RC_GTEST_PROP(Crc32, FollowsItsDefinitionBitByBit, ())
{
    const Bytes bytes = *rc::gen::arbitrary<Bytes>();
    std::uint32_t state = 0xffffffff;
    for (const std::uint8_t byte : bytes) {
        state ^= byte;
        for (int bit = 0; bit < 8; ++bit) {
            state = (state & 1U) != 0 ? (state >> 1U) ^ 0xedb88320U : state >> 1U;
        }
    }
    RC_ASSERT(crc32(bytes) == ~state);
}

}  // namespace spile::ledger
