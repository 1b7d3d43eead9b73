#include "qml/theme/typefaces.hpp"

#include <QFontDatabase>
#include <algorithm>
#include <array>

namespace spile::theme {

namespace {

constexpr std::array files = {"Inter-Regular.otf", "Inter-SemiBold.otf", "Inter-Bold.otf",
                              "B612-Bold.otf"};

QFont font(const char* family, QFont::Weight weight)
{
    QFont font(QString::fromLatin1(family));
    font.setWeight(weight);
    return font;
}

}  // namespace

Typefaces::Typefaces(QObject* parent) : QObject(parent), ready_(load()) {}

bool Typefaces::load()
{
    static const bool loaded = std::all_of(files.begin(), files.end(), [](const char* file) {
        return QFontDatabase::addApplicationFont(
                   QStringLiteral(":/qt-project.org/imports/Spile/Theme/fonts/") +
                   QLatin1String(file)) >= 0;
    });
    return loaded;
}

QFont Typefaces::regular() const { return font("Inter", QFont::Normal); }
QFont Typefaces::semiBold() const { return font("Inter", QFont::DemiBold); }
QFont Typefaces::bold() const { return font("Inter", QFont::Bold); }
QFont Typefaces::numerals() const { return font("B612", QFont::Bold); }

}  // namespace spile::theme
