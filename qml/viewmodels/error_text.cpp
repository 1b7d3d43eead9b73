#include "qml/viewmodels/error_text.hpp"

#include "qml/viewmodels/words.hpp"

#include <QCoreApplication>

namespace spile::viewmodels {

namespace {

struct ErrorText {
    Q_DECLARE_TR_FUNCTIONS(ErrorText)
};

QString withValue(const QString& sentence, const Error& error)
{
    const QString named = sentence.arg(capitalised(word(error.subject)));
    // Not every sentence says the value.
    return sentence.contains(QLatin1String("%2")) ? named.arg(QString::fromStdString(error.value))
                                                  : named;
}

}  // namespace

// A switch without default: a new code without words does not compile.
QString textOf(const Error& error)
{
    const QString limit = QString::fromStdString(error.limit);
    switch (error.code) {
        case ErrorCode::NotFinite:
            return withValue(ErrorText::tr("%1 is not a number. Change it."), error);
        case ErrorCode::OutOfRange:
            return withValue(ErrorText::tr("%1 cannot be %2. It can be %3."), error).arg(limit);
        case ErrorCode::Malformed:
            return withValue(ErrorText::tr("%1 is not right: %2. Change it."), error);
        case ErrorCode::NotFound:
            return withValue(ErrorText::tr("%1 is not in the records of this device."), error);
        case ErrorCode::Conflict:
            return withValue(
                       ErrorText::tr("%1 does not fit what is recorded: %2. Nothing was changed."),
                       error) +
                   (limit.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(limit));
        case ErrorCode::Damaged:
            return ErrorText::tr(
                "The file is damaged. Nothing of it was used; all records are "
                "as before. Ask for it to be written again.");
        case ErrorCode::Foreign:
            return ErrorText::tr("The file is of another cellar. Nothing of it was used.");
        case ErrorCode::Unsupported:
            return ErrorText::tr(
                "This app cannot read it. Nothing was changed. If it comes from a "
                "newer app, update this one.");
        case ErrorCode::TooLarge:
            return ErrorText::tr("It is too large. Nothing of it was used.");
        case ErrorCode::Locked:
            return ErrorText::tr("Another program has this cellar open. Close it, then try again.");
        case ErrorCode::StorageFull:
            return ErrorText::tr(
                "Not kept: storage is full. What was kept before is safe. Free "
                "some space, then try again.");
        case ErrorCode::Storage:
            return ErrorText::tr(
                       "Not kept: the storage did not answer (%1). What was kept before "
                       "is safe. Start the app again.")
                .arg(QString::fromStdString(error.value));
        case ErrorCode::Cancelled:
            return ErrorText::tr("Stopped. What was kept before is safe.");
    }
    return {};
}

}  // namespace spile::viewmodels
