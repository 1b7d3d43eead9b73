#pragma once

#include "qml/viewmodels/settings.hpp"

#include <QObject>
#include <QTranslator>

class QQmlEngine;

namespace spile::app {

/// The app's words in the language that is set; English too has a file, for its plurals.
class Translations : public QObject {
public:
    explicit Translations(viewmodels::Settings& settings);
    /// Let what `engine` shows follow a change of the language.
    void follow(QQmlEngine& engine);

private:
    void load();

    viewmodels::Settings& settings_;
    QTranslator translator_;
    QQmlEngine* engine_ = nullptr;
};

}  // namespace spile::app
