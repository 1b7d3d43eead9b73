#pragma once

#include "core/base/result.hpp"

#include <string>

namespace spile::desk {

/// How the command ends.
enum Exit : int {
    Done = 0,
    NotInRecords = 1,  ///< asked for something the records do not have
    WrongUse = 2,
    Refused = 3,  ///< a file is damaged or refused; nothing changed. Or a backup is not whole
};

/// Say an error in a sentence for the desk: what, which value, what to do.
[[nodiscard]] std::string worded(const Error& error);

[[nodiscard]] Exit exitOf(const Error& error);

/// "1 record", "3 records"; `many` where it is not `one` and an s.
[[nodiscard]] std::string counted(std::uint64_t count, const std::string& one,
                                  const std::string& many = {});

/// A number with so many decimals: "12.50".
[[nodiscard]] std::string fixed(double value, int decimals);

/// What is said of a day file that had no room for so many photos.
[[nodiscard]] std::string photosLeftText(std::uint64_t left, bool backup);
/// How the command ends then: nobody relies on a backup that is not whole.
[[nodiscard]] Exit exitOfHandingOut(std::uint64_t photosLeft, bool backup);

/// The error's code as the desk's JSON names it: "not_found", ...
[[nodiscard]] std::string codeName(ErrorCode code);

}  // namespace spile::desk
