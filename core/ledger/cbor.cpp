#include "core/ledger/cbor.hpp"

#include <algorithm>
#include <limits>

namespace spile::ledger {

namespace {

enum Major : unsigned { Unsigned, Negative, ByteString, TextString, Array, Map, Tag, Simple };

constexpr std::uint64_t falseValue = 20;
constexpr std::uint64_t trueValue = 21;
constexpr std::uint64_t nullValue = 22;

tl::unexpected<Error> damagedCbor(std::string what)
{
    return fail(ErrorCode::Damaged, "record", std::move(what));
}

}  // namespace

void CborWriter::head(unsigned major, std::uint64_t argument)
{
    const auto first = static_cast<std::uint8_t>(major << 5U);
    if (argument < 24) {
        out_.push_back(static_cast<std::uint8_t>(first | argument));
        return;
    }
    const unsigned sizeBits = argument <= 0xffU         ? 0
                              : argument <= 0xffffU     ? 1
                              : argument <= 0xffffffffU ? 2
                                                        : 3;
    out_.push_back(static_cast<std::uint8_t>(first | (24U + sizeBits)));
    for (unsigned byte = 1U << sizeBits; byte-- > 0;) {
        out_.push_back(static_cast<std::uint8_t>(argument >> (8U * byte)));
    }
}

void CborWriter::integer(std::int64_t value)
{
    if (value >= 0) {
        head(Unsigned, static_cast<std::uint64_t>(value));
    } else {
        head(Negative, static_cast<std::uint64_t>(-(value + 1)));
    }
}

void CborWriter::bytes(ByteView value)
{
    head(ByteString, value.size());
    raw(value);
}

void CborWriter::text(std::string_view value)
{
    head(TextString, value.size());
    raw(asBytes(value));
}

Result<CborReader::Head> CborReader::head()
{
    if (rest_.empty()) {
        return damagedCbor("ends early");
    }
    const unsigned major = rest_[0] >> 5U;
    const unsigned info = rest_[0] & 31U;
    if (info < 24) {
        rest_ = rest_.subspan(1);
        return Head{major, info};
    }
    if (info > 27) {
        return damagedCbor("indefinite or reserved length");
    }
    const std::size_t size = std::size_t{1} << (info - 24);
    if (rest_.size() <= size) {
        return damagedCbor("ends early");
    }
    std::uint64_t argument = 0;
    for (std::size_t i = 1; i <= size; ++i) {
        argument = argument << 8U | rest_[i];
    }
    const std::uint64_t shortest = size == 1 ? 24 : std::uint64_t{1} << (4 * size);
    if (argument < shortest) {
        return damagedCbor("number not in its shortest form");
    }
    rest_ = rest_.subspan(size + 1);
    return Head{major, argument};
}

Result<CborType> CborReader::peek() const
{
    CborReader ahead = *this;
    SPILE_ASSIGN(next, ahead.head());
    if (next.major < Tag) {
        return static_cast<CborType>(next.major);
    }
    if (next.major == Simple && (next.argument == falseValue || next.argument == trueValue)) {
        return CborType::Bool;
    }
    if (next.major == Simple && next.argument == nullValue) {
        return CborType::Null;
    }
    return damagedCbor("tag, float or unknown simple value");
}

Result<std::uint64_t> CborReader::argumentOf(unsigned major)
{
    SPILE_ASSIGN(next, head());
    if (next.major != major) {
        return damagedCbor("another type than expected");
    }
    return next.argument;
}

Result<std::uint64_t> CborReader::unsignedInteger() { return argumentOf(Unsigned); }

Result<std::int64_t> CborReader::integer()
{
    SPILE_ASSIGN(next, head());
    if (next.major > Negative ||
        next.argument > static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max())) {
        return damagedCbor("not an integer of 64 bits");
    }
    const auto value = static_cast<std::int64_t>(next.argument);
    return next.major == Unsigned ? value : -1 - value;
}

Result<ByteView> CborReader::string(unsigned major)
{
    SPILE_ASSIGN(size, argumentOf(major));
    if (size > rest_.size()) {
        return damagedCbor("ends early");
    }
    const ByteView value = rest_.first(size);
    rest_ = rest_.subspan(size);
    return value;
}

Result<ByteView> CborReader::bytes() { return string(ByteString); }

Result<std::string_view> CborReader::text()
{
    SPILE_ASSIGN(value, string(TextString));
    if (!isUtf8(asText(value))) {
        return damagedCbor("text is not UTF-8");
    }
    return asText(value);
}

Result<bool> CborReader::boolean()
{
    SPILE_ASSIGN(value, argumentOf(Simple));
    if (value != falseValue && value != trueValue) {
        return damagedCbor("another type than expected");
    }
    return value == trueValue;
}

Result<void> CborReader::null()
{
    SPILE_ASSIGN(value, argumentOf(Simple));
    if (value != nullValue) {
        return damagedCbor("another type than expected");
    }
    return {};
}

Result<std::size_t> CborReader::array()
{
    SPILE_ASSIGN(count, argumentOf(Array));
    if (count > rest_.size()) {
        return damagedCbor("ends early");
    }
    return count;
}

Result<std::size_t> CborReader::map()
{
    SPILE_ASSIGN(count, argumentOf(Map));
    if (count > rest_.size() / 2) {
        return damagedCbor("ends early");
    }
    return count;
}

Result<void> CborReader::skipItems(std::size_t count, int depth)
{
    for (std::size_t i = 0; i < count; ++i) {
        SPILE_TRY(skip(depth));
    }
    return {};
}

Result<void> CborReader::skipPairs(std::size_t count, int depth)
{
    ByteView previous;
    for (std::size_t i = 0; i < count; ++i) {
        const ByteView before = rest_;
        SPILE_TRY(skip(depth));
        const ByteView key = before.first(before.size() - rest_.size());
        if (i > 0 && !std::lexicographical_compare(previous.begin(), previous.end(), key.begin(),
                                                   key.end())) {
            return damagedCbor("map keys out of order or twice");
        }
        previous = key;
        SPILE_TRY(skip(depth));
    }
    return {};
}

Result<void> CborReader::skip(int depth)
{
    SPILE_ASSIGN(type, peek());
    switch (type) {
        case CborType::Unsigned:
        case CborType::Negative:
            SPILE_TRY(integer());
            return {};
        case CborType::Bytes:
            SPILE_TRY(bytes());
            return {};
        case CborType::Text:
            SPILE_TRY(text());
            return {};
        case CborType::Bool:
        case CborType::Null:
            SPILE_TRY(head());
            return {};
        case CborType::Array:
        case CborType::Map:
            break;
    }
    if (depth == 0) {
        return damagedCbor("nested too deep");
    }
    if (type == CborType::Array) {
        SPILE_ASSIGN(count, array());
        return skipItems(count, depth - 1);
    }
    SPILE_ASSIGN(count, map());
    return skipPairs(count, depth - 1);
}

Result<ByteView> CborReader::item()
{
    const ByteView before = rest_;
    SPILE_TRY(skip(cborDepthMax));
    return before.first(before.size() - rest_.size());
}

}  // namespace spile::ledger
