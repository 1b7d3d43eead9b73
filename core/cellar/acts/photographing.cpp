#include "core/cellar/acts/photographing.hpp"

#include "core/picture/metadata.hpp"

namespace spile::cellar {

Result<RecordedPhoto> recordPhoto(Cellar& cellar, const NewPhoto& photo)
{
    SPILE_TRY(needSubject(cellar, "barrel", photo.barrel));
    SPILE_TRY(needPerson(cellar, photo.circumstance));
    FieldSet fields(photo.circumstance);
    fields.setText(Field::Purpose, photo.purpose);
    SPILE_ASSIGN(entry, newEntry("photo", photo.barrel, std::move(fields), photo.circumstance.at));
    SPILE_ASSIGN(bytes, picture::stripMetadata(photo.picture));
    SPILE_ASSIGN(hash, cellar.ledger().photos().add(bytes));
    const ledger::PhotoRef reference{hash, bytes.size()};
    entry.photos = {reference};
    entry.target = photo.taste;
    SPILE_ASSIGN(id, recordOne(cellar, std::move(entry)));
    return RecordedPhoto{id, reference};
}

}  // namespace spile::cellar
