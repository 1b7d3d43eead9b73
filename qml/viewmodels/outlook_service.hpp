#pragma once

#include "core/cellar/acts/foreseeing.hpp"
#include "core/outlook/barrel_outlook.hpp"
#include "qml/viewmodels/context.hpp"

#include <QObject>
#include <QTimer>
#include <optional>

namespace spile::viewmodels {

/// Keeps the outlooks up to date: learns from all records and computes the outlook of every barrel,
/// off the UI thread, after a start and once changes have settled; keeps what they come to, so that
/// the due list and the calendar go by it.
class OutlookService : public QObject {
    Q_OBJECT

public:
    explicit OutlookService(Context& context, QObject* parent = nullptr);

    /// The first page is shown: begin soon.
    void begin();
    /// Look now whether there is anything new, without waiting until changes have settled.
    void learnNow();

    /// What all records have taught so far; what is assumed, until that is known.
    [[nodiscard]] const outlook::CellarModel& model() const { return model_; }
    /// Whether the records have been read through once.
    [[nodiscard]] bool hasLearned() const { return learnedAt_.has_value(); }

    /// Whether it is looked through just now.
    [[nodiscard]] bool isRunning() const { return running_; }

signals:
    /// There is a new model; what was computed with the old one may be out of date.
    void learned();

private:
    struct Learned {
        std::optional<outlook::CellarModel> model;  // none: nothing is new
        std::vector<cellar::KeptOutlook> outlooks;
        std::int64_t newest = 0;
    };
    void take(Learned learned, Instant now);
    void keep(std::vector<cellar::KeptOutlook> outlooks, Instant now);

    Context& context_;
    outlook::CellarModel model_;
    std::int64_t newest_ = 0;
    std::optional<Instant> learnedAt_;
    bool begun_ = false;
    bool running_ = false;
    bool again_ = false;  // asked for meanwhile
    QTimer settling_;
};

}  // namespace spile::viewmodels
