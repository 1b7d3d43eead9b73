#pragma once

#include "core/cellar/settling.hpp"
#include "qml/viewmodels/formats.hpp"

#include <functional>
#include <map>

namespace spile::viewmodels {

/// What is read with the choices about one thing that is to be settled, to say them in full.
struct ChoiceFacts {
    std::map<SubjectId, std::string> names;  // of barrels, lots, people, places, beers
    std::map<EntryId, QString> fills;        // what was filled in
};

/// How the app says what several devices have left for a person to decide.
class SettlingText {
    Q_DECLARE_TR_FUNCTIONS(SettlingText)

public:
    /// What it is about: "Rum 3", "Kim's phone".
    [[nodiscard]] static QString about(const cellar::UnsettledRow& row);
    /// What is to be decided, in a sentence.
    [[nodiscard]] static QString what(const cellar::UnsettledRow& row);
    /// Of one record: on which device and when; of a device that waits: the code that it shows.
    [[nodiscard]] static QString who(const cellar::UnsettledRow& row, const Formats& formats);
    /// What it means until it is settled, and what settling does.
    [[nodiscard]] static QString consequence(const cellar::UnsettledRow& row);
    [[nodiscard]] static QString choice(const cellar::UnsettledRow& row,
                                        const cellar::Choice& choice, const ChoiceFacts& facts,
                                        const Formats& formats);
    /// Who says so and when.
    [[nodiscard]] static QString hint(const cellar::Choice& choice, const Formats& formats);
    /// What was done.
    [[nodiscard]] static QString done(const cellar::UnsettledRow& row, const cellar::Choice& choice,
                                      const QString& name);
    [[nodiscard]] static QString allCount(std::uint64_t records);
    [[nodiscard]] static QString deskOnly();

private:
    [[nodiscard]] static QString takeBack(const cellar::Choice& choice, const ChoiceFacts& facts,
                                          const Formats& formats);
};

/// Whether only a device that may admit others can do that.
[[nodiscard]] bool needsDesk(cellar::Settling does);

}  // namespace spile::viewmodels
