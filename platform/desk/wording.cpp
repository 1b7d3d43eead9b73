#include "platform/desk/wording.hpp"

#include <array>
#include <cstdio>
#include <string_view>

namespace spile::desk {

namespace {

struct Words {
    std::string_view name;
    std::string_view says;
    Exit exit;
};

// No default: a new code without words does not compile.
Words wordsOf(ErrorCode code)
{
    switch (code) {
        case ErrorCode::NotFinite:
            return {"not_finite", "is not a finite number", WrongUse};
        case ErrorCode::OutOfRange:
            return {"out_of_range", "is outside its range", WrongUse};
        case ErrorCode::Malformed:
            return {"malformed", "does not have the form that is asked for", WrongUse};
        case ErrorCode::NotFound:
            return {"not_found", "is not in the records", NotInRecords};
        case ErrorCode::Conflict:
            return {"conflict", "does not fit what is there", WrongUse};
        case ErrorCode::Damaged:
            return {"damaged", "is damaged; nothing of it was used", Refused};
        case ErrorCode::Foreign:
            return {"foreign", "belongs to another cellar; nothing of it was used", Refused};
        case ErrorCode::Unsupported:
            return {"unsupported", "is of a kind that this version does not read", Refused};
        case ErrorCode::TooLarge:
            return {"too_large", "is over the limit; nothing of it was used", Refused};
        case ErrorCode::Locked:
            return {"locked", "is in use by another program", Refused};
        case ErrorCode::StorageFull:
            return {"storage_full", "could not be written: no room is left", Refused};
        case ErrorCode::Storage:
            return {"storage", "could not be read or written", Refused};
        case ErrorCode::Cancelled:
            return {"cancelled", "was stopped", Refused};
    }
    return {"unknown", "failed", Refused};
}

}  // namespace

std::string worded(const Error& error)
{
    const bool isFile = error.subject == "file" || error.subject.find('/') != std::string::npos;
    std::string text = error.subject + " ";
    text += error.code == ErrorCode::NotFound && isFile ? "is not there" : wordsOf(error.code).says;
    if (!error.value.empty()) {
        text += ": " + error.value;
    }
    if (!error.limit.empty()) {
        text += " (" + error.limit + ")";
    }
    return text;
}

std::string counted(std::uint64_t count, const std::string& one, const std::string& many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many.empty() ? one + "s" : many);
}

std::string fixed(double value, int decimals)
{
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
    return text.data();
}

Exit exitOf(const Error& error) { return wordsOf(error.code).exit; }

std::string photosLeftText(std::uint64_t left, bool backup)
{
    if (backup) {
        return "the backup is not whole: " + counted(left, "photo") +
               " found no room in the file. `export` writes all photos and records to a folder: "
               "keep one beside it. The phones may have the photos, too.";
    }
    return counted(left, "photo") +
           " found no room in the file. A device that takes it in asks for them in its own day "
           "file; take that in and hand out --for it, until none are left.";
}

Exit exitOfHandingOut(std::uint64_t photosLeft, bool backup)
{
    return backup && photosLeft > 0 ? Refused : Done;
}

std::string codeName(ErrorCode code) { return std::string(wordsOf(code).name); }

}  // namespace spile::desk
