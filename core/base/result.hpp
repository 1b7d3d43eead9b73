#pragma once

#include <cstdint>
#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace spile::inline base {

/// What went wrong, in terms a caller can act on. The desk and the app own the wording.
enum class ErrorCode : std::uint8_t {
    NotFinite,    ///< a number is NaN or infinite
    OutOfRange,   ///< a value lies outside its limits; `limit` names them
    Malformed,    ///< what was typed or given does not have the form asked for
    NotFound,     ///< the records do not have it
    Conflict,     ///< it exists already, or the state does not allow it
    Damaged,      ///< a file or stored record is not what its writer made
    Foreign,      ///< sound, but it belongs to another cellar
    Unsupported,  ///< made by a newer version, or of a kind that is not read
    TooLarge,     ///< refused before reading: over a size limit
    Locked,       ///< another process holds it
    StorageFull,  ///< no room left; nothing was saved
    Storage,      ///< the disk refused; `value` has the system's words
    Cancelled,    ///< the caller asked to stop
};

/// One failure. `subject` names the thing ("volume_ml", "day file"), `value` what was found,
/// `limit` what would be right or what to do. Any of them may be empty.
struct Error {
    ErrorCode code{};
    std::string subject;
    std::string value;
    std::string limit;

    friend bool operator==(const Error&, const Error&) = default;
};

template <class T>
using Result = tl::expected<T, Error>;

[[nodiscard]] inline tl::unexpected<Error> fail(ErrorCode code, std::string subject,
                                                std::string value = {}, std::string limit = {})
{
    return tl::unexpected<Error>(
        Error{code, std::move(subject), std::move(value), std::move(limit)});
}

/// Pass an error on unchanged from a Result of another type.
template <class T>
[[nodiscard]] tl::unexpected<Error> passOn(Result<T>& result)
{
    return tl::unexpected<Error>(std::move(result.error()));
}

}  // namespace spile::inline base

/// Leave the calling function with the error of `expression`, a Result<void>, if it failed.
#define SPILE_TRY(expression)                              \
    do {                                                   \
        if (auto spileTried = (expression); !spileTried) { \
            return ::spile::passOn(spileTried);            \
        }                                                  \
    } while (false)

/// Name the value of `expression`, a Result, `name`; or leave the function with its error.
#define SPILE_ASSIGN(name, expression)       \
    auto name##Tried = (expression);         \
    if (!name##Tried) {                      \
        return ::spile::passOn(name##Tried); \
    }                                        \
    auto& name = *name##Tried  // NOLINT(bugprone-macro-parentheses): a declared name
