#pragma once

#include "core/cellar/stays.hpp"
#include "core/outlook/aging.hpp"
#include "core/outlook/cellar_model.hpp"
#include "core/outlook/learning.hpp"
#include "core/outlook/shared_tasters.hpp"
#include "core/outlook/teaching.hpp"
#include "core/outlook/usual_priors.hpp"

#include <map>
#include <string>
#include <utility>

/// What a CellarModel holds. Private to core/outlook.
namespace spile::outlook {

inline constexpr int pageRows = 200;  // barrels that are read at once

/// The tasters that are told apart; all further ones share the last number.
class TasterNumbers {
public:
    /// `sheets`: how many sheets each person has closed; none: one taster, whoever comes.
    explicit TasterNumbers(const std::map<SubjectId, int>& sheets = {});

    [[nodiscard]] std::size_t size() const { return panel_.size(); }
    [[nodiscard]] int of(const SubjectId& person) const;
    /// The weights of the reference panel: the same for each who tastes regularly.
    [[nodiscard]] const std::vector<double>& panel() const { return panel_; }

private:
    std::map<SubjectId, int> numbers_;
    std::vector<double> panel_;
};

/// Barrels that are taken as of a kind: for the lessons.
struct KindKey {
    int fill = 0;  // 1, 2, 3 and later; 0: any
    std::string spirit;
    friend auto operator<=>(const KindKey&, const KindKey&) = default;
};

struct LearnedAttribute {
    SharedTasters shared;
    std::map<EntryId, std::size_t> sites;  // of the stays, by their fill
    std::map<KindKey, Lesson> lessons;
};

struct CellarModel::Learned {
    TasterNumbers tasters;
    std::map<std::string, LearnedAttribute> attributes;
    std::map<std::pair<std::string, std::string>, TaughtWindow> windows;  // by beer and attribute
};

[[nodiscard]] BarrelKind kindOf(const cellar::BarrelStays& barrel, const cellar::Stay& stay);

/// The prior of an attribute in such a barrel, as far as it was taught.
[[nodiscard]] CoursePrior priorOf(const CellarModel::Learned& learned, const std::string& attribute,
                                  const BarrelKind& kind);

/// One attribute of a stay, as the model takes it; `used` are the stay's scores that are in it.
struct StayData {
    SharedBarrel barrel;
    std::vector<const cellar::StayScore*> used;
};
[[nodiscard]] StayData stayData(const CellarModel::Learned& learned, const cellar::Stay& stay,
                                const std::string& attribute, const CoursePrior& prior,
                                const Aging& aging);

/// A setting with nothing learned for so many tasters.
[[nodiscard]] SharedSetting usualSetting(const TasterNumbers& tasters);

/// The course of an attribute: with what all other barrels say of the tasters.
[[nodiscard]] Course courseOf(const CellarModel::Learned& learned, const std::string& attribute,
                              const EntryId& fill, const SharedBarrel& barrel);

}  // namespace spile::outlook
