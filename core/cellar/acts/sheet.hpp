#pragma once

#include "core/cellar/acts/tasting.hpp"

/// An open tasting sheet. Every tap is durable before the call returns, and belongs to this device
/// alone until the sheet is closed; then it becomes one `taste` entry, in one transaction.
namespace spile::cellar {

struct OpenSheet {
    SubjectId sheet;
    SubjectId barrel;
    SubjectId person;
    std::optional<SubjectId> flight;
    std::optional<int> glass;
    Instant opened;
    int taps = 0;
};

/// Errors    those of every act.
[[nodiscard]] Result<SubjectId> openSheet(Cellar& cellar, const SubjectId& barrel,
                                          const SubjectId& person,
                                          const std::optional<SubjectId>& flight = {},
                                          const std::optional<int>& glass = {});

/// Taps on an open sheet; a later one of the same attribute stands for the earlier.
///
/// Errors    NotFound if the sheet is not open; OutOfRange and Malformed as for the entry.
[[nodiscard]] Result<void> tapScore(Cellar& cellar, const SubjectId& sheet,
                                    const std::string& attribute, Score score);
/// A strength of none takes the fault back.
[[nodiscard]] Result<void> tapFault(Cellar& cellar, const SubjectId& sheet,
                                    const std::string& fault, std::optional<int> strength);
[[nodiscard]] Result<void> tapLiking(Cellar& cellar, const SubjectId& sheet, int liking);
[[nodiscard]] Result<void> tapPalateTired(Cellar& cellar, const SubjectId& sheet, bool tired);
[[nodiscard]] Result<void> writeNote(Cellar& cellar, const SubjectId& sheet,
                                     const std::string& note);
/// Keep the order in which the attributes are asked for.
[[nodiscard]] Result<void> keepOrder(Cellar& cellar, const SubjectId& sheet,
                                     const std::vector<std::string>& attributes);

/// Take the last tap back, as often as there are taps. False if none is left.
[[nodiscard]] Result<bool> undoTap(Cellar& cellar, const SubjectId& sheet);

/// Return what stands on the sheet now.
[[nodiscard]] Result<NewTaste> readSheet(Cellar& cellar, const SubjectId& sheet);
/// Return the sheets that are open on this device, the oldest first.
[[nodiscard]] Result<std::vector<OpenSheet>> openSheets(Cellar& cellar);

/// Turn the sheet into a `taste` entry.
///
/// Errors    those of every act; the sheet then stays open as it is.
[[nodiscard]] Result<EntryId> closeSheet(Cellar& cellar, const SubjectId& sheet);

}  // namespace spile::cellar
