#include "core/cellar/kind.hpp"

#include "core/cellar/true_time.hpp"

#include <algorithm>
#include <array>

namespace spile::cellar {

namespace {

using F = Field;
constexpr bool required = true;

constexpr std::array genesisFields = {KindField{F::Name, required}, KindField{F::Mark, required},
                                      KindField{F::PublicKey, required}};
constexpr std::array deviceFields = {KindField{F::Name, required}, KindField{F::PublicKey},
                                     KindField{F::Role, required}};
constexpr std::array personFields = {KindField{F::Name, required}, KindField{F::Note}};
constexpr std::array placeFields = {KindField{F::Name, required}, KindField{F::Parent},
                                    KindField{F::Note}};
constexpr std::array targetFields = {KindField{F::Name, required}, KindField{F::Windows},
                                     KindField{F::Note}};
constexpr std::array batchFields = {KindField{F::Name, required}, KindField{F::BrewedMs},
                                    KindField{F::Target},         KindField{F::SgE4},
                                    KindField{F::AbvE2},          KindField{F::Note}};
constexpr std::array barrelFields = {
    KindField{F::Code, required}, KindField{F::Mark},      KindField{F::Spirit},
    KindField{F::Wood},           KindField{F::CharLevel}, KindField{F::SizeMl},
    KindField{F::FillsBefore},    KindField{F::EmptiedMs}, KindField{F::TareG},
    KindField{F::Place},          KindField{F::Note},      KindField{F::FullMl},
    KindField{F::LengthMm},       KindField{F::BilgeMm},   KindField{F::HeadMm},
    KindField{F::StaveMm}};
constexpr std::array fillFields = {
    KindField{F::Batch}, KindField{F::VolumeMl},  KindField{F::DatePrecision},
    KindField{F::AbvE2}, KindField{F::SgE4},      KindField{F::Person},
    KindField{F::Note},  KindField{F::Programme}, KindField{F::From}};
constexpr std::array checkFieldsOf = {KindField{F::Finding, required},
                                      KindField{F::Sound, required}, KindField{F::Person},
                                      KindField{F::Note}};
constexpr std::array gaugeFields = {KindField{F::VolumeMl, required},
                                    KindField{F::GaugeMethod, required},
                                    KindField{F::DipMm},
                                    KindField{F::MassG},
                                    KindField{F::TempMc},
                                    KindField{F::Bound},
                                    KindField{F::Person},
                                    KindField{F::Note}};
constexpr std::array drawFields = {KindField{F::VolumeMl, required},
                                   KindField{F::DrawMethod, required},
                                   KindField{F::Person},
                                   KindField{F::Flight},
                                   KindField{F::Glass},
                                   KindField{F::Note}};
constexpr std::array flightFields = {KindField{F::Name}, KindField{F::Glasses, required},
                                     KindField{F::Person}, KindField{F::Note},
                                     KindField{F::CleanGlasses}};
constexpr std::array tasteFields = {KindField{F::Person, required},
                                    KindField{F::Scores, required},
                                    KindField{F::Faults},
                                    KindField{F::Liking},
                                    KindField{F::AttributeOrder},
                                    KindField{F::PalateTired},
                                    KindField{F::Flight},
                                    KindField{F::Glass},
                                    KindField{F::Note}};
constexpr std::array readingFields = {
    KindField{F::SgE4},    KindField{F::PhE2},     KindField{F::TempMc}, KindField{F::AbvE2},
    KindField{F::SgRefMc}, KindField{F::SgTempMc}, KindField{F::Person}, KindField{F::Note}};
constexpr std::array directionFields = {KindField{F::Directions, required}, KindField{F::Batch},
                                        KindField{F::Person}};
constexpr std::array photoFields = {KindField{F::Purpose, required}, KindField{F::Person},
                                    KindField{F::Note}};
constexpr std::array verdictFields = {KindField{F::Verdict, required},
                                      KindField{F::UntilMs},
                                      KindField{F::Person},
                                      KindField{F::Note},
                                      KindField{F::ChanceE3},
                                      KindField{F::BestMs}};
constexpr std::array moveFields = {KindField{F::Place, required}, KindField{F::Person},
                                   KindField{F::Note}};
constexpr std::array cutOffFields = {KindField{F::ChainPoints}, KindField{F::Reason},
                                     KindField{F::Person}};
constexpr std::array adoptFields = {KindField{F::Person}, KindField{F::Note}};
constexpr std::array reasonFields = {KindField{F::Reason}, KindField{F::Person}};
constexpr std::array renewFields = {KindField{F::Before, required}, KindField{F::ChainPoints}};
constexpr std::array observeFields = {KindField{F::Boot, required},
                                      KindField{F::SinceBootMs, required},
                                      KindField{F::ShownMs, required}, KindField{F::Person}};
constexpr std::array emptyFields = {
    KindField{F::VolumeMl}, KindField{F::NextUse},   KindField{F::Person},  KindField{F::Note},
    KindField{F::HeelMl},   KindField{F::Programme}, KindField{F::UntilMs}, KindField{F::Method}};
constexpr std::array climateFields = {KindField{F::TempMc, required},
                                      KindField{F::HumidityE1, required}, KindField{F::Person},
                                      KindField{F::Note}};
constexpr std::array repairFields = {KindField{F::Repair, required}, KindField{F::Person},
                                     KindField{F::Note}};
constexpr std::array topUpFields = {KindField{F::VolumeMl, required},
                                    KindField{F::Batch},
                                    KindField{F::Substance},
                                    KindField{F::AbvE2},
                                    KindField{F::Person},
                                    KindField{F::Note},
                                    KindField{F::From}};
constexpr std::array doseFields = {KindField{F::Substance, required},
                                   KindField{F::VolumeMl},
                                   KindField{F::DrainedMl},
                                   KindField{F::MassG},
                                   KindField{F::AbvE2},
                                   KindField{F::Person},
                                   KindField{F::Note}};
constexpr std::array stepFields = {KindField{F::Sheet, required},
                                   KindField{F::Step, required},
                                   KindField{F::Run, required},
                                   KindField{F::Outcome, required},
                                   KindField{F::Reason},
                                   KindField{F::Values},
                                   KindField{F::Words},
                                   KindField{F::PlannedS},
                                   KindField{F::ElapsedS},
                                   KindField{F::Person},
                                   KindField{F::Note}};

// A lot: beer that was brought together in a tank. What goes into it are transfers and finishes; a
// mix says what it was made of when something was taken from it, and what was taken answers the
// mix.
constexpr std::array lotFields = {KindField{F::Name, required}, KindField{F::Target},
                                  KindField{F::Place}, KindField{F::Person}, KindField{F::Note}};
constexpr std::array transferFields = {
    KindField{F::From, required}, KindField{F::VolumeMl, required},
    KindField{F::AbvE2},          KindField{F::SgE4},
    KindField{F::TempMc},         KindField{F::Method},
    KindField{F::Person},         KindField{F::Note},
    KindField{F::Sources}};
constexpr std::array mixFields = {KindField{F::Sources, required}};
constexpr std::array finishFields = {KindField{F::Substance, required},
                                     KindField{F::DoseMg},
                                     KindField{F::VolumeMl},
                                     KindField{F::AbvE2},
                                     KindField{F::Allergen},
                                     KindField{F::UntilMs},
                                     KindField{F::Person},
                                     KindField{F::Note}};
constexpr std::array takeOutFields = {KindField{F::Person}, KindField{F::Note}};
constexpr std::array treatFields = {KindField{F::Method, required}, KindField{F::TempMc},
                                    KindField{F::ElapsedS}, KindField{F::Person},
                                    KindField{F::Note}};
constexpr std::array carbonateFields = {KindField{F::Method, required},
                                        KindField{F::Co2E2, required},
                                        KindField{F::PressurePa},
                                        KindField{F::TempMc},
                                        KindField{F::DoseMg},
                                        KindField{F::Person},
                                        KindField{F::Note}};
constexpr std::array packageFields = {KindField{F::LotCode, required},
                                      KindField{F::Packages, required},
                                      KindField{F::VolumeMl, required},
                                      KindField{F::LostMl},
                                      KindField{F::AbvE2},
                                      KindField{F::LabelAbvE2},
                                      KindField{F::Law},
                                      KindField{F::Co2E2},
                                      KindField{F::BestBeforeMs},
                                      KindField{F::Person},
                                      KindField{F::Note}};
constexpr std::array discardFields = {KindField{F::VolumeMl, required},
                                      KindField{F::Reason, required}, KindField{F::Person},
                                      KindField{F::Note}};
constexpr std::array holdFields = {KindField{F::Reason, required}, KindField{F::Person},
                                   KindField{F::Note}};
constexpr std::array clearFields = {KindField{F::Outcome, required}, KindField{F::Person},
                                    KindField{F::Note}};
constexpr std::array releaseFields = {KindField{F::Name, required},
                                      KindField{F::Packages, required}, KindField{F::Person},
                                      KindField{F::Note}};
constexpr std::array costFields = {KindField{F::CostE2, required}, KindField{F::Name, required},
                                   KindField{F::VolumeMl},         KindField{F::FillsExpected},
                                   KindField{F::Person},           KindField{F::Note}};
constexpr std::array benchFields = {KindField{F::Portions, required}, KindField{F::Name},
                                    KindField{F::Target}, KindField{F::Person}, KindField{F::Note}};
constexpr std::array acceptFields = {
    KindField{F::Glass, required}, KindField{F::TastedCold, required},
    KindField{F::TastedCarbonated, required}, KindField{F::Person}, KindField{F::Note}};

constexpr bool aboutBarrel = true;
constexpr bool other = false;
constexpr bool followed = true;
constexpr bool bySubject = true;
constexpr std::array kinds = {
    KindSpec{"genesis", 1, genesisFields},
    KindSpec{"device", 1, deviceFields},
    KindSpec{"person", 1, personFields},
    KindSpec{"place", 1, placeFields},
    KindSpec{"target", 1, targetFields},
    KindSpec{"batch", 1, batchFields},
    KindSpec{"barrel", 1, barrelFields, aboutBarrel},
    KindSpec{"fill", 1, fillFields, aboutBarrel, followed},
    KindSpec{"check", 1, checkFieldsOf, aboutBarrel, other, bySubject},
    KindSpec{"gauge", 1, gaugeFields, aboutBarrel, other, bySubject},
    KindSpec{"draw", 1, drawFields, aboutBarrel, other, bySubject},
    KindSpec{"flight", 1, flightFields},
    KindSpec{"taste", 1, tasteFields, aboutBarrel, other, bySubject},
    KindSpec{"reading", 1, readingFields, aboutBarrel, other, bySubject},
    KindSpec{"direction", 1, directionFields, aboutBarrel, other, bySubject},
    KindSpec{"photo", 1, photoFields, aboutBarrel},
    KindSpec{"verdict", 1, verdictFields, aboutBarrel, other, bySubject},
    KindSpec{"move", 1, moveFields, aboutBarrel},
    KindSpec{"empty", 1, emptyFields, aboutBarrel},
    KindSpec{"climate", 1, climateFields, other, other, bySubject},
    KindSpec{"repair", 1, repairFields, aboutBarrel},
    KindSpec{"top_up", 1, topUpFields, aboutBarrel, followed},
    KindSpec{"dose", 1, doseFields, aboutBarrel},
    KindSpec{"sheet_step", 1, stepFields, aboutBarrel, other, bySubject},
    KindSpec{"lot", 1, lotFields},
    KindSpec{"transfer", 1, transferFields, other, followed},
    KindSpec{"mix", 1, mixFields},
    KindSpec{"finish", 1, finishFields},
    KindSpec{"take_out", 1, takeOutFields, other, followed},
    KindSpec{"treat", 1, treatFields},
    KindSpec{"carbonate", 1, carbonateFields},
    KindSpec{"package", 1, packageFields, other, followed},
    KindSpec{"discard", 1, discardFields, other, followed},
    KindSpec{"hold", 1, holdFields},
    KindSpec{"clear", 1, clearFields, other, followed},
    KindSpec{"release", 1, releaseFields, other, followed},
    KindSpec{"cost", 1, costFields},
    KindSpec{"bench", 1, benchFields},
    KindSpec{"accept", 1, acceptFields, other, followed},
    KindSpec{"cut_off", 1, cutOffFields},
    KindSpec{"adopt", 1, adoptFields},
    KindSpec{"reinstate", 1, reasonFields},
    KindSpec{"renew", 1, renewFields},
    KindSpec{observeKind, 1, observeFields},
};

}  // namespace

std::span<const KindSpec> allKinds() { return kinds; }

const KindSpec* findKind(std::string_view kind)
{
    const auto* const found = std::find_if(kinds.begin(), kinds.end(),
                                           [&](const KindSpec& spec) { return spec.kind == kind; });
    return found == kinds.end() ? nullptr : found;
}

Result<void> checkFields(const KindSpec& kind, const ledger::Fields& fields)
{
    for (const auto& [number, value] : fields) {
        const FieldSpec* spec = findField(number);
        const bool own = spec != nullptr &&
                         std::any_of(kind.fields.begin(), kind.fields.end(),
                                     [&](const KindField& f) { return f.field == spec->field; });
        if (!own) {
            return fail(ErrorCode::Malformed, std::string(kind.kind),
                        "field " + std::to_string(number), "a field that this kind has");
        }
        SPILE_TRY(checkValue(*spec, value));
    }
    for (const KindField& field : kind.fields) {
        if (field.required && !fields.contains(static_cast<std::uint32_t>(field.field))) {
            return fail(ErrorCode::Malformed, std::string(specOf(field.field).name), "nothing",
                        "a value");
        }
    }
    return {};
}

}  // namespace spile::cellar
