// What the page records: the second part of lot_record_view_model.cpp.
#include "core/cellar/acts/packing.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/lot_record_view_model.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/taking_back.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

cellar::Circumstance LotRecordViewModel::by() const
{
    cellar::Circumstance by;
    by.person = people_.who();
    by.note = note_.trimmed().toStdString();
    by.at = Formats::eventTime(context_.formats.now());
    return by;
}

LotRecordViewModel::Act LotRecordViewModel::act() const
{
    const std::string said = wordChosen();
    switch (kind_) {
        case Kind::Hold:
            return [=, lot = subject_, by = by()](cellar::Cellar& cellar) {
                return cellar::recordHold(cellar, lot, said, by);
            };
        case Kind::Clear:
            return [=, hold = entry_, by = by()](cellar::Cellar& cellar) {
                return cellar::recordClear(cellar, hold, said, by);
            };
        case Kind::Release: {
            cellar::NewRelease release{entry_, said, going_, by()};
            std::erase_if(release.packages, [](const auto& one) { return one.count == 0; });
            return [release](cellar::Cellar& cellar) {
                return cellar::recordRelease(cellar, release);
            };
        }
        case Kind::Discard:
            return [discard = cellar::NewDiscard{subject_, volume_, said, by()}](
                       cellar::Cellar& cellar) { return cellar::recordDiscard(cellar, discard); };
        case Kind::Cost:
            return [cost = cellar::NewCost{subject_,
                                           costTyped().value_or(0),
                                           own_.trimmed().toStdString(),
                                           {},
                                           asksFills() && fills_ > 0 ? std::optional(fills_)
                                                                     : std::nullopt,
                                           by()},
                    ofBeer = costsBeer()](cellar::Cellar& cellar) -> Result<EntryId> {
                if (!ofBeer) {
                    return cellar::recordCost(cellar, cost);
                }
                cellar::NewCost paid = cost;
                SPILE_ASSIGN(batch, cellar::batchOfBarrel(cellar.database(), cost.subject));
                if (!batch) {
                    return fail(ErrorCode::NotFound, "batch");
                }
                paid.subject = batch->subject;
                return cellar::recordCost(cellar, paid);
            };
        case Kind::NewLot:
            break;
    }
    return {};
}

void LotRecordViewModel::makeLot()
{
    context_.workers.act(
        this,
        [lot = cellar::NewLot{own_.trimmed().toStdString(), {}, {}, {}, by()}](
            cellar::Cellar& cellar) { return cellar::registerLot(cellar, lot); },
        [this](Result<SubjectId> lot) {
            busy_ = false;
            error_ = lot ? QString() : textOf(lot.error());
            emit changed();
            if (lot) {
                emit made(*lot);
            }
        });
}

void LotRecordViewModel::record()
{
    if (!canRecord()) {
        return;
    }
    busy_ = true;
    emit changed();
    if (kind_ == Kind::NewLot) {
        makeLot();
        return;
    }
    context_.workers.act(this, act(), [this](Result<EntryId> entry) {
        busy_ = false;
        if (!entry) {
            // What is held says why, in the words of the hold.
            error_ = entry.error().subject == "hold" && kind_ == Kind::Release
                         ? tr("The lot is held: %1. Its result comes first.")
                               .arg(word(entry.error().value))
                         : textOf(entry.error());
            emit changed();
            return;
        }
        emit changed();
        emit recorded();
        context_.notice.tell(tr("%1, %2: kept.", "Release, L-26A").arg(title(), about_),
                             takeBack(context_, *entry));
    });
}

}  // namespace spile::viewmodels
