#pragma once

#include <QFont>
#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::theme {

/// The fonts that are built into the app, so that text has the same size on every machine.
///
/// Not by FontLoader: each that loads a font has every window lay out all its text again.
class Typefaces : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QFont regular READ regular CONSTANT FINAL)
    Q_PROPERTY(QFont semiBold READ semiBold CONSTANT FINAL)
    Q_PROPERTY(QFont bold READ bold CONSTANT FINAL)
    /// All digits of one width, points and colons narrow. The alphabet of barrel codes has no O and
    /// I to be mistaken.
    Q_PROPERTY(QFont numerals READ numerals CONSTANT FINAL)
    /// Whether all are there.
    Q_PROPERTY(bool ready READ isReady CONSTANT FINAL)

public:
    explicit Typefaces(QObject* parent = nullptr);

    /// Load the fonts, once; best before the first window. False if one is not there.
    static bool load();

    [[nodiscard]] QFont regular() const;
    [[nodiscard]] QFont semiBold() const;
    [[nodiscard]] QFont bold() const;
    [[nodiscard]] QFont numerals() const;
    [[nodiscard]] bool isReady() const { return ready_; }

private:
    bool ready_;
};

}  // namespace spile::theme
