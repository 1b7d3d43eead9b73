#include "core/labels/typeface.hpp"

#include "core/labels/built_in_fonts.hpp"

#include <algorithm>
#include <array>
#include <hb-ot.h>
#include <hb-subset.h>
#include <memory>

namespace spile::labels {

namespace {

template <class T, void (*destroy)(T*)>
struct Destroy {
    void operator()(T* thing) const { destroy(thing); }
};
using Blob = std::unique_ptr<hb_blob_t, Destroy<hb_blob_t, hb_blob_destroy>>;
using HbFace = std::unique_ptr<hb_face_t, Destroy<hb_face_t, hb_face_destroy>>;
using Font = std::unique_ptr<hb_font_t, Destroy<hb_font_t, hb_font_destroy>>;
using Buffer = std::unique_ptr<hb_buffer_t, Destroy<hb_buffer_t, hb_buffer_destroy>>;
using SubsetInput =
    std::unique_ptr<hb_subset_input_t, Destroy<hb_subset_input_t, hb_subset_input_destroy>>;

// A built-in font; never changed after it is made, so that all threads may use it.
struct Typeface {
    HbFace face;
    Font font;
    double unitsPerEm = 1;

    explicit Typeface(ByteView file)
    {
        const Blob blob(hb_blob_create(asText(file).data(), static_cast<unsigned int>(file.size()),
                                       HB_MEMORY_MODE_READONLY, nullptr, nullptr));
        face.reset(hb_face_create(blob.get(), 0));
        font.reset(hb_font_create(face.get()));
        unitsPerEm = hb_face_get_upem(face.get());
        hb_font_make_immutable(font.get());
    }
};

const Typeface& typeface(Face face)
{
    static const Typeface code(codeFont);
    static const Typeface words(wordsFont);
    return face == Face::Code ? code : words;
}

int thousandths(const Typeface& of, hb_position_t units)
{
    return static_cast<int>(units * 1000.0 / of.unitsPerEm);
}

// What HarfBuzz draws into, by calling back; the built-in fonts have cubic curves alone.
struct Outline {
    double unitsPerEm;
    std::vector<OutlineStep> steps;

    void add(char letter, std::initializer_list<float> units)
    {
        steps.push_back({letter, {}});
        for (const float unit : units) {
            steps.back().places.push_back(static_cast<double>(unit) / unitsPerEm);
        }
    }
};

void moveTo(hb_draw_funcs_t* /*all*/, void* into, hb_draw_state_t* /*state*/, float x, float y,
            void* /*own*/)
{
    static_cast<Outline*>(into)->add('M', {x, y});
}
void lineTo(hb_draw_funcs_t* /*all*/, void* into, hb_draw_state_t* /*state*/, float x, float y,
            void* /*own*/)
{
    static_cast<Outline*>(into)->add('L', {x, y});
}
void curveTo(hb_draw_funcs_t* /*all*/, void* into, hb_draw_state_t* /*state*/, float x1, float y1,
             float x2, float y2, float x, float y, void* /*own*/)
{
    static_cast<Outline*>(into)->add('C', {x1, y1, x2, y2, x, y});
}
void closePath(hb_draw_funcs_t* /*all*/, void* into, hb_draw_state_t* /*state*/, void* /*own*/)
{
    static_cast<Outline*>(into)->add('Z', {});
}

hb_draw_funcs_t* drawFunctions()
{
    static hb_draw_funcs_t* const functions = [] {
        hb_draw_funcs_t* const made = hb_draw_funcs_create();
        hb_draw_funcs_set_move_to_func(made, moveTo, nullptr, nullptr);
        hb_draw_funcs_set_line_to_func(made, lineTo, nullptr, nullptr);
        hb_draw_funcs_set_cubic_to_func(made, curveTo, nullptr, nullptr);
        hb_draw_funcs_set_close_path_func(made, closePath, nullptr, nullptr);
        hb_draw_funcs_make_immutable(made);
        return made;
    }();
    return functions;
}

// The texts that the glyphs stand for: from each cluster's first byte to the next one's. The
// glyphs of one cluster follow each other.
void nameGlyphs(const std::vector<unsigned int>& clusters, std::string_view text, Shaped& shaped)
{
    for (std::size_t i = 0; i < clusters.size(); ++i) {
        if (i > 0 && clusters[i] == clusters[i - 1]) {
            continue;
        }
        std::size_t end = text.size();
        for (const unsigned int other : clusters) {
            if (other > clusters[i]) {
                end = std::min<std::size_t>(end, other);
            }
        }
        shaped.glyphs[i].text = text.substr(clusters[i], end - clusters[i]);
    }
}

}  // namespace

Shaped shape(Face face, std::string_view text)
{
    const Typeface& with = typeface(face);
    const Buffer buffer(hb_buffer_create());
    hb_buffer_add_utf8(buffer.get(), text.data(), static_cast<int>(text.size()), 0,
                       static_cast<int>(text.size()));
    hb_buffer_guess_segment_properties(buffer.get());
    // Inter would make × of the x in 3x4: what was typed is printed.
    const std::array off{hb_feature_t{HB_TAG('c', 'a', 'l', 't'), 0, HB_FEATURE_GLOBAL_START,
                                      HB_FEATURE_GLOBAL_END}};
    hb_shape(with.font.get(), buffer.get(), off.data(), static_cast<unsigned int>(off.size()));

    unsigned int count = 0;
    const hb_glyph_info_t* const infos = hb_buffer_get_glyph_infos(buffer.get(), &count);
    const hb_glyph_position_t* const places = hb_buffer_get_glyph_positions(buffer.get(), &count);
    Shaped shaped;
    std::vector<unsigned int> clusters;
    for (unsigned int i = 0; i < count; ++i) {
        const double x = shaped.width + places[i].x_offset / with.unitsPerEm;
        const double y = places[i].y_offset / with.unitsPerEm;
        shaped.glyphs.push_back({infos[i].codepoint, x, y, {}});
        shaped.width += places[i].x_advance / with.unitsPerEm;
        shaped.complete = shaped.complete && infos[i].codepoint != 0;
        clusters.push_back(infos[i].cluster);
        hb_glyph_extents_t ink{};
        if (hb_font_get_glyph_extents(with.font.get(), infos[i].codepoint, &ink) != 0) {
            shaped.inkTop = std::max(shaped.inkTop, y + ink.y_bearing / with.unitsPerEm);
            shaped.inkBottom =
                std::min(shaped.inkBottom, y + (ink.y_bearing + ink.height) / with.unitsPerEm);
        }
    }
    nameGlyphs(clusters, text, shaped);
    return shaped;
}

FaceFacts factsOf(Face face)
{
    const Typeface& of = typeface(face);
    FaceFacts facts;
    std::array<char, 64> name{};
    auto length = static_cast<unsigned int>(name.size());
    hb_ot_name_get_utf8(of.face.get(), HB_OT_NAME_ID_POSTSCRIPT_NAME, HB_LANGUAGE_INVALID, &length,
                        name.data());
    facts.name = name.data();
    hb_font_extents_t lines{};
    hb_font_get_h_extents(of.font.get(), &lines);
    facts.ascent = thousandths(of, lines.ascender);
    facts.descent = thousandths(of, lines.descender);
    hb_position_t capHeight = 0;
    hb_ot_metrics_get_position(of.font.get(), HB_OT_METRICS_TAG_CAP_HEIGHT, &capHeight);
    facts.capHeight = thousandths(of, capHeight);
    for (unsigned int glyph = 0; glyph < hb_face_get_glyph_count(of.face.get()); ++glyph) {
        hb_glyph_extents_t ink{};
        hb_font_get_glyph_extents(of.font.get(), glyph, &ink);
        facts.left = std::min(facts.left, thousandths(of, ink.x_bearing));
        facts.right = std::max(facts.right, thousandths(of, ink.x_bearing + ink.width));
        facts.top = std::max(facts.top, thousandths(of, ink.y_bearing));
        facts.bottom = std::min(facts.bottom, thousandths(of, ink.y_bearing + ink.height));
    }
    return facts;
}

double advanceOf(Face face, std::uint32_t glyph)
{
    const Typeface& of = typeface(face);
    return hb_font_get_glyph_h_advance(of.font.get(), glyph) * 1000.0 / of.unitsPerEm;
}

std::vector<OutlineStep> outlineOf(Face face, std::uint32_t glyph)
{
    const Typeface& of = typeface(face);
    Outline outline{of.unitsPerEm, {}};
    hb_font_get_glyph_shape(of.font.get(), glyph, drawFunctions(), &outline);
    return std::move(outline.steps);
}

Bytes subsetOf(Face face, const std::set<std::uint32_t>& glyphs)
{
    const SubsetInput input(hb_subset_input_create_or_fail());
    if (!input) {
        return {};
    }
    hb_subset_input_set_flags(input.get(), HB_SUBSET_FLAGS_RETAIN_GIDS);
    for (const std::uint32_t glyph : glyphs) {
        hb_set_add(hb_subset_input_glyph_set(input.get()), glyph);
    }
    const HbFace small(hb_subset_or_fail(typeface(face).face.get(), input.get()));
    if (!small) {
        return {};
    }
    const Blob table(hb_face_reference_table(small.get(), HB_TAG('C', 'F', 'F', ' ')));
    unsigned int length = 0;
    const char* const data = hb_blob_get_data(table.get(), &length);
    return {data, data + length};
}

}  // namespace spile::labels
