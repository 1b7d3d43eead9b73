#pragma once

#include "core/plan/sheet.hpp"

#include <QString>
#include <map>
#include <vector>

namespace spile::viewmodels {

/// The work sheets that come with the app, and the words on them in the app's language.
class WorkSheets {
public:
    /// Reads them from the app's resources.
    WorkSheets();

    [[nodiscard]] const std::vector<plan::Sheet>& all() const { return sheets_; }
    /// None if this version has no sheet of that name.
    [[nodiscard]] const plan::Sheet* find(std::string_view name) const;

    /// Words of a sheet, translated.
    [[nodiscard]] static QString said(const std::string& words);
    /// What a number or a choice is called.
    [[nodiscard]] QString label(const std::string& name) const;
    /// The words of a caution, and as they were written.
    [[nodiscard]] QString caution(const std::string& name) const;
    [[nodiscard]] std::vector<std::string> cautionsOf(const plan::Step& step) const;

private:
    std::vector<plan::Sheet> sheets_;
    std::map<std::string, std::string> labels_, cautions_;
};

}  // namespace spile::viewmodels
