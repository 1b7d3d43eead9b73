#include "platform/app/translations.hpp"

#include <QCoreApplication>
#include <QQmlEngine>

namespace spile::app {

Translations::Translations(viewmodels::Settings& settings) : settings_(settings)
{
    load();
    connect(&settings_, &viewmodels::Settings::languageChanged, this, [this] {
        load();
        if (engine_ != nullptr) {
            engine_->retranslate();
        }
    });
}

void Translations::follow(QQmlEngine& engine) { engine_ = &engine; }

void Translations::load()
{
    const QLocale locale =
        settings_.language().isEmpty() ? QLocale() : QLocale(settings_.language());
    QCoreApplication::removeTranslator(&translator_);
    const QString folder = QStringLiteral(":/i18n");
    if (translator_.load(locale, QStringLiteral("spile"), QStringLiteral("_"), folder) ||
        translator_.load(QStringLiteral("spile_en"), folder)) {
        QCoreApplication::installTranslator(&translator_);
    }
}

}  // namespace spile::app
