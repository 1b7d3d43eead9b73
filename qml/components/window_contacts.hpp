#pragma once

#include "qml/components/touch_rules.hpp"

#include <QHash>
#include <QObject>
#include <array>
#include <vector>

class QEventPoint;
class QPointingDevice;
class QQuickWindow;
class QTouchEvent;

namespace spile::components {

/// The contacts on one window, watched as they come; nothing is swallowed. There is one for each
/// window.
class WindowContacts : public QObject {
    Q_OBJECT

public:
    /// Return that of `window`, made if there is none yet; it lives as long as the window.
    static WindowContacts* of(QQuickWindow* window);

    /// Return whether contact `id` of `device` may count as a tap; what is not a touch screen
    /// always may.
    bool accepts(const QPointingDevice* device, int id);
    void dry();

    [[nodiscard]] bool isWet() const { return wetness_.isWet(); }
    [[nodiscard]] int count(Refusal refusal) const;
    [[nodiscard]] double unitsPerMm() const { return unitsPerMm_; }
    void setUnitsPerMm(double units);

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void changed();

private:
    explicit WindowContacts(QQuickWindow* window);
    void note(const QTouchEvent& event);
    void note(const QEventPoint& point, double time);
    void begin(const QEventPoint& point, double time);
    void endAll(double time);
    [[nodiscard]] std::size_t latest(int id) const;

    QQuickWindow* window_;
    std::vector<Contact> contacts_;
    std::array<int, 6> counts_{};  // by Refusal
    Wetness wetness_;
    double now_ = 0;
    double unitsPerMm_ = 6.3;
};

}  // namespace spile::components
