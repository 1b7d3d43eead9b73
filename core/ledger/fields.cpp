#include "core/ledger/fields.hpp"

#include "core/ledger/cbor.hpp"

#include <limits>

namespace spile::ledger {

namespace {

void write(CborWriter& out, const Value& value);

struct Writing {
    CborWriter& out;

    void operator()(std::monostate /*nothing*/) const { out.null(); }
    void operator()(bool value) const { out.boolean(value); }
    void operator()(std::int64_t value) const { out.integer(value); }
    void operator()(const std::string& value) const { out.text(value); }
    void operator()(const Bytes& value) const { out.bytes(value); }
    void operator()(const List& values) const
    {
        out.array(values.size());
        for (const Value& value : values) {
            write(out, value);
        }
    }
};

void write(CborWriter& out, const Value& value) { std::visit(Writing{out}, value.held); }

Result<Value> read(CborReader& in, int depth);

Result<Value> readList(CborReader& in, int depth)
{
    if (depth == 0) {
        return fail(ErrorCode::Damaged, "record", "nested too deep");
    }
    SPILE_ASSIGN(count, in.array());
    List list;
    for (std::size_t i = 0; i < count; ++i) {
        SPILE_ASSIGN(value, read(in, depth - 1));
        list.push_back(std::move(value));
    }
    return Value(std::move(list));
}

Result<Value> read(CborReader& in, int depth)
{
    SPILE_ASSIGN(type, in.peek());
    switch (type) {
        case CborType::Unsigned:
        case CborType::Negative:
            return in.integer().map([](std::int64_t value) { return Value(value); });
        case CborType::Bytes:
            return in.bytes().map([](ByteView v) { return Value(Bytes(v.begin(), v.end())); });
        case CborType::Text:
            return in.text().map([](std::string_view v) { return Value(std::string(v)); });
        case CborType::Bool:
            return in.boolean().map([](bool value) { return Value(value); });
        case CborType::Null:
            SPILE_TRY(in.null());
            return Value();
        case CborType::Array:
            return readList(in, depth);
        case CborType::Map:
            break;
    }
    return fail(ErrorCode::Damaged, "record", "a map inside a body");
}

}  // namespace

Bytes encodeFields(const Fields& fields)
{
    CborWriter out;
    out.map(fields.size());
    for (const auto& [number, value] : fields) {
        out.unsignedInteger(number);
        write(out, value);
    }
    return out.take();
}

Result<Fields> decodeFields(ByteView body)
{
    CborReader in(body);
    SPILE_ASSIGN(count, in.map());
    Fields fields;
    for (std::size_t i = 0; i < count; ++i) {
        SPILE_ASSIGN(number, in.unsignedInteger());
        const bool inOrder = fields.empty() || number > fields.rbegin()->first;
        if (!inOrder || number > std::numeric_limits<std::uint32_t>::max()) {
            return fail(ErrorCode::Damaged, "record", "fields out of order or twice");
        }
        SPILE_ASSIGN(value, read(in, cborDepthMax - 1));
        fields.emplace_hint(fields.end(), static_cast<std::uint32_t>(number), std::move(value));
    }
    if (!in.atEnd()) {
        return fail(ErrorCode::Damaged, "record", "bytes after the last field");
    }
    return fields;
}

}  // namespace spile::ledger
