#include "qml/viewmodels/scan_sighting.hpp"

#include <algorithm>

namespace spile::viewmodels {

std::vector<scan::LabelText> labelsIn(const std::vector<scan::Code>& codes)
{
    std::vector<scan::LabelText> labels;
    for (const scan::Code& code : codes) {
        const auto label = scan::ownLabel(code);
        if (label && std::find(labels.begin(), labels.end(), *label) == labels.end()) {
            labels.push_back(*label);
        }
    }
    return labels;
}

static Result<void> addBarrels(cellar::Cellar& cellar, const std::string& code,
                               std::vector<cellar::BarrelRow>& barrels)
{
    SPILE_ASSIGN(rows, cellar::barrelsWithCode(cellar.database(), code));
    barrels.insert(barrels.end(), rows.begin(), rows.end());
    return {};
}

Result<ScanSighting> sight(cellar::Cellar& cellar, const ScanQuestion& question)
{
    ScanSighting sighting{cellar.identity().mark, question.label, false, {}, {}, {}};
    if (question.joiner) {
        SPILE_ASSIGN(joiner, sightJoiner(cellar, *question.joiner));
        sighting.joiner = std::move(joiner);
        return sighting;
    }
    if (!question.typed.empty()) {
        const auto code = scan::parseTyped(sighting.cellarMark, question.typed);
        sighting.isTypedWrong = !code;
        if (code) {
            sighting.label = scan::LabelText{sighting.cellarMark, *code};
        }
    }
    if (sighting.isTypedWrong) {
        for (const std::string& code : scan::nearCodes(sighting.cellarMark, question.typed)) {
            SPILE_TRY(addBarrels(cellar, code, sighting.barrels));
        }
    } else if (sighting.label) {
        SPILE_TRY(addBarrels(cellar, sighting.label->code, sighting.barrels));
    }
    for (const scan::LabelText& label : question.beside) {
        if (label.cellarMark == sighting.cellarMark) {
            SPILE_TRY(addBarrels(cellar, label.code, sighting.beside));
        }
    }
    return sighting;
}

}  // namespace spile::viewmodels
