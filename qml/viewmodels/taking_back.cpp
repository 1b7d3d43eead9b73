#include "qml/viewmodels/taking_back.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"

#include <QCoreApplication>

namespace spile::viewmodels {

namespace {

using Undo = std::function<void()> (*)(Context&, const EntryId&);

// Voiding a record takes it back; voiding what voided it lets it count again.
std::function<void()> voiding(Context& context, const EntryId& entry, const QString& said,
                              Undo undo)
{
    return [&context, entry, said, undo] {
        context.workers.act(
            &context.notice,
            [entry](cellar::Cellar& cellar) { return cellar::voidEntry(cellar, entry); },
            [&context, said, undo](Result<EntryId> voided) {
                if (voided) {
                    context.notice.tell(said, undo(context, *voided));
                } else {
                    context.notice.refuse(textOf(voided.error()));
                }
            });
    };
}

}  // namespace

std::function<void()> takeBack(Context& context, const EntryId& entry)
{
    return voiding(context, entry,
                   QCoreApplication::translate("TakeBack", "Taken back: it does not count."),
                   letCount);
}

std::function<void()> letCount(Context& context, const EntryId& voided)
{
    return voiding(context, voided, QCoreApplication::translate("TakeBack", "It counts again."),
                   takeBack);
}

}  // namespace spile::viewmodels
