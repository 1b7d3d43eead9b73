#pragma once

#include <QString>
#include <QStringList>
#include <string_view>

namespace spile::viewmodels {

/// Return the screen's word for one that the records hold in English ("dried fruit", "volume_ml"):
/// translated if it is known, else as it is.
[[nodiscard]] QString word(std::string_view stored);

/// Return `text` with its first letter as a capital.
[[nodiscard]] QString capitalised(const QString& text);

/// The words of a list of the records, for pads.
template <class Words>
[[nodiscard]] QStringList padWords(const Words& stored)
{
    QStringList words;
    for (const std::string_view one : stored) {
        words << capitalised(word(one));
    }
    return words;
}

}  // namespace spile::viewmodels
