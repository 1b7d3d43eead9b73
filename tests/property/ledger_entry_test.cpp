#include "core/ledger/cbor.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/fields.hpp"
#include "core/ledger/keys.hpp"

#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace spile::ledger {

namespace {

constexpr std::int64_t latestMs = 253402300799999;  // year 9999

rc::Gen<Bytes> anyBytes() { return rc::gen::container<Bytes>(rc::gen::arbitrary<std::uint8_t>()); }

template <class Id>
rc::Gen<Id> anyId()
{
    return rc::gen::map(rc::gen::container<Bytes>(Id::size, rc::gen::arbitrary<std::uint8_t>()),
                        [](const Bytes& bytes) { return *Id::fromBytes(bytes); });
}

template <class Id>
rc::Gen<Id> anyIdButZero()
{
    return rc::gen::suchThat(anyId<Id>(), [](const Id& id) { return !id.isZero(); });
}

template <class T>
rc::Gen<std::optional<T>> maybe(rc::Gen<T> gen)
{
    return rc::gen::oneOf(rc::gen::just(std::optional<T>()),
                          rc::gen::map(std::move(gen), [](T v) { return std::optional<T>(v); }));
}

template <class T>
rc::Gen<std::vector<T>> upTo(std::size_t most, rc::Gen<T> gen)
{
    return rc::gen::mapcat(rc::gen::inRange<std::size_t>(0, most + 1), [=](std::size_t count) {
        return rc::gen::container<std::vector<T>>(count, gen);
    });
}

rc::Gen<std::int64_t> anyInteger()
{
    using Limits = std::numeric_limits<std::int64_t>;
    return rc::gen::oneOf(
        rc::gen::arbitrary<std::int64_t>(),
        rc::gen::element<std::int64_t>(0, 23, 24, 255, 256, 65535, 65536, 4294967295, 4294967296,
                                       -1, -24, -25, Limits::max(), Limits::min()));
}

rc::Gen<Instant> anyInstant()
{
    return rc::gen::map(rc::gen::oneOf(rc::gen::inRange<std::int64_t>(-latestMs, latestMs),
                                       rc::gen::element<std::int64_t>(0, -1, latestMs, -latestMs)),
                        [](std::int64_t ms) { return instantFromMs(ms); });
}

// ASCII and a character of each length in UTF-8.
rc::Gen<std::string> anyText()
{
    return rc::gen::map(
        rc::gen::container<std::vector<std::string>>(rc::gen::oneOf(
            rc::gen::map(rc::gen::inRange(0, 128),
                         [](int c) { return std::string(1, static_cast<char>(c)); }),
            rc::gen::element<std::string>("\u00fc", "\u6c34", "\U0001f37a", "\u202e"))),
        [](const std::vector<std::string>& parts) {
            std::string text;
            for (const std::string& part : parts) {
                text += part;
            }
            return text;
        });
}

rc::Gen<Entry> anyEntry()
{
    return rc::gen::exec([] {
        Entry entry;
        entry.cellar = *anyId<CellarId>();
        entry.device = *anyId<DeviceId>();
        entry.seq = *rc::gen::element<std::uint64_t>(1, 2, 23, 24, 65536, std::uint64_t{1} << 53U);
        entry.previous = entry.seq == 1 ? EntryId() : *anyIdButZero<EntryId>();
        entry.recorded = *anyInstant();
        entry.wall = *maybe(anyInstant());
        entry.boot = *anyId<BootId>();
        entry.sinceBoot = Milliseconds(*rc::gen::inRange<std::int64_t>(0, latestMs));
        entry.at = *maybe(rc::gen::map(rc::gen::pair(anyInstant(), rc::gen::inRange(-1080, 1081)),
                                       [](const auto& drawn) {
                                           return EventTime{drawn.first, drawn.second};
                                       }));
        if (*rc::gen::arbitrary<bool>()) {
            const auto count = *rc::gen::inRange<std::uint32_t>(1, 65536);
            entry.group = Group{*rc::gen::inRange<std::uint32_t>(0, count), count};
        }
        entry.kind = *rc::gen::map(rc::gen::inRange<std::size_t>(1, 33),
                                   [](std::size_t n) { return std::string(n, 'k'); });
        entry.kindVersion = *rc::gen::arbitrary<std::uint32_t>();
        entry.subject = *anyId<SubjectId>();
        entry.overwrites = *upTo(overwritesMax, anyId<EntryId>());
        entry.target = *maybe(anyId<EntryId>());
        entry.bodyHash = *anyId<Sha256>();
        entry.bodyBytes = *rc::gen::inRange<std::uint32_t>(0, bodyBytesMax + 1);
        entry.photos = *upTo(
            photosMax, rc::gen::map(rc::gen::pair(anyId<Sha256>(),
                                                  rc::gen::inRange<std::uint64_t>(0, 1U << 30U)),
                                    [](const auto& drawn) {
                                        return PhotoRef{drawn.first, drawn.second};
                                    }));
        return entry;
    });
}

rc::Gen<Value> anyValue(int depth)
{
    const auto leaf =
        rc::gen::oneOf(rc::gen::just(Value()),
                       rc::gen::map(rc::gen::arbitrary<bool>(), [](bool v) { return Value(v); }),
                       rc::gen::map(anyInteger(), [](std::int64_t v) { return Value(v); }),
                       rc::gen::map(anyText(), [](std::string v) { return Value(std::move(v)); }),
                       rc::gen::map(anyBytes(), [](Bytes v) { return Value(std::move(v)); }));
    if (depth == 0) {
        return leaf;
    }
    return rc::gen::oneOf(
        leaf, rc::gen::map(rc::gen::resize(5, rc::gen::container<List>(anyValue(depth - 1))),
                           [](List v) { return Value(std::move(v)); }));
}

rc::Gen<Fields> anyFields()
{
    return rc::gen::container<Fields>(rc::gen::arbitrary<std::uint32_t>(), anyValue(3));
}

// `bytes` with a few of them changed, left out or put in: nearly right, so that it gets far.
Bytes slightlyOther(Bytes bytes)
{
    const int changes = *rc::gen::inRange(1, 4);
    for (int i = 0; i < changes && !bytes.empty(); ++i) {
        const auto at =
            static_cast<std::ptrdiff_t>(*rc::gen::inRange<std::size_t>(0, bytes.size()));
        const auto value = *rc::gen::arbitrary<std::uint8_t>();
        switch (*rc::gen::inRange(0, 3)) {
            case 0:
                bytes[static_cast<std::size_t>(at)] = value;
                break;
            case 1:
                bytes.erase(bytes.begin() + at);
                break;
            default:
                bytes.insert(bytes.begin() + at, value);
                break;
        }
    }
    return bytes;
}

void coreIsRefusedOrCanonical(const Bytes& bytes)
{
    const auto entry = decodeCore(bytes);
    if (entry) {
        RC_ASSERT(encodeCore(*entry) == bytes);
    } else {
        RC_ASSERT((entry.error().code == ErrorCode::Damaged ||
                   entry.error().code == ErrorCode::Unsupported));
    }
}

void bodyIsRefusedOrCanonical(const Bytes& bytes)
{
    const auto fields = decodeFields(bytes);
    if (fields) {
        RC_ASSERT(encodeFields(*fields) == bytes);
    } else {
        RC_ASSERT(fields.error().code == ErrorCode::Damaged);
    }
}

}  // namespace

RC_GTEST_PROP(EntryCodec, RoundTrips, ())
{
    const Entry entry = *anyEntry();
    const auto back = decodeCore(encodeCore(entry));
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == entry);
}

RC_GTEST_PROP(EntryCodec, WritesWhatTheCborProfileAllows, ())
{
    const Bytes core = encodeCore(*anyEntry());
    CborReader in(core);
    RC_ASSERT(in.item().has_value());
    RC_ASSERT(in.atEnd());
    RC_ASSERT(core.size() <= coreBytesMax);
}

RC_GTEST_PROP(EntryCodec, AnswersAnyBytesWithAnErrorOrTheOneEntryTheyWrite, ())
{
    coreIsRefusedOrCanonical(*anyBytes());
    coreIsRefusedOrCanonical(slightlyOther(encodeCore(*anyEntry())));
}

RC_GTEST_PROP(EntryCodec, RefusesEveryPrefix, ())
{
    const Bytes core = encodeCore(*anyEntry());
    const auto length = *rc::gen::inRange<std::size_t>(0, core.size());
    RC_ASSERT(!decodeCore(ByteView(core).first(length)));
}

RC_GTEST_PROP(FieldsCodec, RoundTrips, ())
{
    const Fields fields = *anyFields();
    const auto back = decodeFields(encodeFields(fields));
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == fields);
}

RC_GTEST_PROP(FieldsCodec, AnswersAnyBytesWithAnErrorOrTheOneBodyTheyWrite, ())
{
    bodyIsRefusedOrCanonical(*anyBytes());
    bodyIsRefusedOrCanonical(slightlyOther(encodeFields(*anyFields())));
}

RC_GTEST_PROP(EntryOnTheWire, IsTakenOffTheFrontByteForByte, ())
{
    const SigningKey key(*anyId<KeySeed>());
    const Bytes body = encodeFields(*anyFields());
    RC_PRE(body.size() <= bodyBytesMax);
    const SignedEntry entry = signEntry(*anyEntry(), body, key);
    const Bytes behind = *anyBytes();
    Bytes wire;
    appendWire(wire, entry);
    wire.insert(wire.end(), behind.begin(), behind.end());
    ByteView rest = wire;
    const auto taken = takeWire(rest);
    RC_ASSERT(taken.has_value());
    RC_ASSERT(taken->core == entry.core);
    RC_ASSERT(taken->body == entry.body);
    RC_ASSERT(taken->signature == entry.signature);
    RC_ASSERT(Bytes(rest.begin(), rest.end()) == behind);
    const auto core = decodeCore(taken->core);
    RC_ASSERT(core.has_value());
    RC_ASSERT(core->device == key.deviceId());
    RC_ASSERT(verify(key.publicKey(), signedMessage(core->cellar, taken->id()), taken->signature));
}

RC_GTEST_PROP(EntryOnTheWire, AnswersAnyBytes, ())
{
    const Bytes bytes = *anyBytes();
    ByteView rest = bytes;
    const auto taken = takeWire(rest);
    if (taken) {
        Bytes again;
        appendWire(again, *taken);
        again.insert(again.end(), rest.begin(), rest.end());
        RC_ASSERT(again == bytes);
    }
}

}  // namespace spile::ledger
