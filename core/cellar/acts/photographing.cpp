#include "core/cellar/acts/photographing.hpp"

#include "core/picture/metadata.hpp"

namespace spile::cellar {

Result<ledger::NewEntry> photoEntry(const SubjectId& barrel, const ledger::PhotoRef& photo,
                                    const std::string& purpose, const Circumstance& circumstance)
{
    FieldSet fields(circumstance);
    fields.setText(Field::Purpose, purpose);
    SPILE_ASSIGN(entry, newEntry("photo", barrel, std::move(fields), circumstance.at));
    entry.photos = {photo};
    return std::move(entry);
}

Result<RecordedPhoto> recordPhoto(Cellar& cellar, const NewPhoto& photo)
{
    SPILE_TRY(needSubject(cellar, "barrel", photo.barrel));
    SPILE_TRY(needPerson(cellar, photo.circumstance));
    SPILE_TRY(checkValue(specOf(Field::Purpose), photo.purpose));
    SPILE_ASSIGN(bytes, picture::stripMetadata(photo.picture));
    SPILE_ASSIGN(hash, cellar.ledger().photos().add(bytes));
    const ledger::PhotoRef reference{hash, bytes.size()};
    SPILE_ASSIGN(entry, photoEntry(photo.barrel, reference, photo.purpose, photo.circumstance));
    entry.target = photo.taste;
    SPILE_ASSIGN(id, recordOne(cellar, std::move(entry)));
    return RecordedPhoto{id, reference};
}

}  // namespace spile::cellar
