#pragma once

#include <QString>
#include <QTemporaryDir>

namespace spile::app {

/// A copy of a cellar in a temporary folder, for going through the app without leaving a trace.
class ScratchCellar {
public:
    /// Copy the cellar in `folder`, if there is one.
    explicit ScratchCellar(const QString& folder);

    [[nodiscard]] QString folder() const { return temporary_.filePath(QStringLiteral("cellar")); }
    /// Empty if all went well, else what did not.
    [[nodiscard]] QString problem() const { return problem_; }

private:
    QTemporaryDir temporary_;
    QString problem_;
};

}  // namespace spile::app
