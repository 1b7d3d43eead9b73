#pragma once

#include "core/cellar/settling.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/settling_text.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// One thing that is to be settled: what it means, and what can be done about it.
class SettleViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString what READ what NOTIFY changed FINAL)
    Q_PROPERTY(QString who READ who NOTIFY changed FINAL)
    Q_PROPERTY(QString consequence READ consequence NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    /// Somebody else has settled it while the page was shown.
    Q_PROPERTY(bool gone READ isGone NOTIFY changed FINAL)
    /// What each choice does, and who says so and when.
    Q_PROPERTY(QList<QString> choices READ choices NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> hints READ hints NOTIFY changed FINAL)
    /// Why nothing can be chosen here; empty: it can.
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(bool asksName READ asksName NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    /// Words of the pad that lets all records count; empty: there is none.
    Q_PROPERTY(QString allText READ allText NOTIFY changed FINAL)
    /// How far that is, 0 to 1; less than 0: it is not under way.
    Q_PROPERTY(qreal progress READ progress NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    explicit SettleViewModel(Context& context, QObject* parent = nullptr);

    void begin(const cellar::UnsettledRow& row);
    /// The page is left: it follows the records no longer.
    void leave() { begun_ = false; }
    Q_INVOKABLE void choose(int index);
    Q_INVOKABLE void letAllCount();
    /// What counts by then stays so.
    Q_INVOKABLE void stop();

    [[nodiscard]] QString about() const { return SettlingText::about(row_); }
    [[nodiscard]] QString what() const { return SettlingText::what(row_); }
    [[nodiscard]] QString who() const { return SettlingText::who(row_, context_.formats); }
    [[nodiscard]] QString consequence() const { return SettlingText::consequence(row_); }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isGone() const { return loaded_ && gone_; }
    [[nodiscard]] QStringList choices() const;
    [[nodiscard]] QStringList hints() const;
    [[nodiscard]] QString missing() const;
    [[nodiscard]] bool asksName() const;
    [[nodiscard]] QString name() const { return name_; }
    void setName(const QString& name);
    [[nodiscard]] QString allText() const;
    [[nodiscard]] qreal progress() const { return progress_; }
    [[nodiscard]] QString error() const { return error_; }

signals:
    void changed();
    /// It was settled, and there is nothing more to it.
    void settled(const QString& said);

private:
    struct Read {
        std::optional<cellar::UnsettledRow> row;  // none: it is settled
        std::vector<cellar::Choice> choices;
        ChoiceFacts facts;
        bool mayAdmit = false;
    };
    [[nodiscard]] static Result<Read> read(cellar::Cellar& cellar, const cellar::UnsettledRow& row,
                                           const Formats& formats);
    void refresh();
    void take(Read read);
    void ended(const Error& error);

    Context& context_;
    cellar::UnsettledRow row_;
    std::vector<cellar::Choice> choices_;
    ChoiceFacts facts_;
    QString name_, error_;
    int asked_ = 0;  // counts the rows that were begun with, so that an old answer is not shown
    qreal progress_ = -1;
    bool mayAdmit_ = false;
    bool begun_ = false;
    bool loaded_ = false;
    bool gone_ = false;
    bool busy_ = false;
};

}  // namespace spile::viewmodels
