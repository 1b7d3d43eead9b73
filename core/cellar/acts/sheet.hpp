#pragma once

#include "core/cellar/acts/tasting.hpp"

/// An open tasting sheet. Every tap is durable before the call returns, and belongs to this device
/// alone until the sheet is closed; then it becomes one `taste` entry with its reading and photos,
/// in one transaction.
namespace spile::cellar {

struct OpenSheet {
    SubjectId sheet;
    SubjectId barrel;
    SubjectId person;
    std::optional<SubjectId> flight;
    std::optional<int> glass;
    Instant opened;
    int taps = 0;
    std::string step;  // where the taster is, as keepStep() was told; empty: at the beginning
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

enum class Measure : std::uint8_t { SpecificGravity, Ph, Temperature };
/// Keep what was measured, as NewReading has it, a temperature in kelvins; none takes it back.
[[nodiscard]] Result<void> tapReading(Cellar& cellar, const SubjectId& sheet, Measure measure,
                                      std::optional<double> value);
/// Keep a photo of the sample: the picture is stored without its metadata, then the tap. A sheet
/// has at most 32. A photo whose tap is undone stays as a file that no record names.
///
/// Errors    besides those of a tap: Unsupported, Damaged or TooLarge for the picture.
[[nodiscard]] Result<ledger::PhotoRef> keepPhoto(Cellar& cellar, const SubjectId& sheet,
                                                 ByteView picture, const std::string& purpose);
/// Keep the order in which the attributes are asked for.
[[nodiscard]] Result<void> keepOrder(Cellar& cellar, const SubjectId& sheet,
                                     const std::vector<std::string>& attributes);

/// Take the last tap back, as often as there are taps. False if none is left.
[[nodiscard]] Result<bool> undoTap(Cellar& cellar, const SubjectId& sheet);

/// What a tap said. By `subject`:
///
///     score         name: the attribute; number: the score, none: not judged
///     fault         name: the fault; number: its strength, none: taken back
///     liking        number
///     palate_tired  number: 1 or 0
///     note          text
///     order         text: the attributes, a line each
///     reading       name: the field ("sg_e4"); number: its scaled integer, none: taken back
///     photo         name: the photo's SHA-256 in hex; number: its bytes; text: the purpose
struct LastTap {
    std::string subject;
    std::string name;
    std::optional<std::int64_t> number;
    std::optional<std::string> text;
};
/// Return the tap that undoTap() would take back; none if there is none.
[[nodiscard]] Result<std::optional<LastTap>> lastTap(Cellar& cellar, const SubjectId& sheet);

/// Keep where on the sheet the taster is, so that it can be found again after a restart. This is no
/// tap: undo leaves it alone.
///
/// Errors    NotFound if the sheet is not open; OutOfRange over 80 characters.
[[nodiscard]] Result<void> keepStep(Cellar& cellar, const SubjectId& sheet,
                                    const std::string& step);

struct SheetPhoto {
    ledger::PhotoRef photo;
    std::string purpose;
};
/// What stands on a sheet: the tasting, and what was measured and photographed with it.
struct SheetContent {
    NewTaste taste;
    NewReading reading;  // nothing in it that was not measured
    std::vector<SheetPhoto> photos;
};
/// Return what stands on the sheet now.
///
/// Errors    NotFound if the sheet is not open.
[[nodiscard]] Result<SheetContent> readSheet(Cellar& cellar, const SubjectId& sheet);
/// Return the sheets that are open on this device, the oldest first.
[[nodiscard]] Result<std::vector<OpenSheet>> openSheets(Cellar& cellar);

/// Turn the sheet into a `taste` entry, a `reading` if something was measured and a `photo` for
/// each picture, which answer it; return the taste's. They count together or not at all.
///
/// Errors    those of every act; the sheet then stays open as it is.
[[nodiscard]] Result<EntryId> closeSheet(Cellar& cellar, const SubjectId& sheet);

/// Throw an open sheet away with all its taps; nothing is recorded.
///
/// Errors    NotFound if the sheet is not open.
[[nodiscard]] Result<void> discardSheet(Cellar& cellar, const SubjectId& sheet);

}  // namespace spile::cellar
