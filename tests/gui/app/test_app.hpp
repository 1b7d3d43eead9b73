#pragma once

#include "core/base/simulated.hpp"
#include "qml/viewmodels/app_view_model.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/test_device.hpp"

#include <QObject>
#include <QTranslator>
#include <QtQml/qqmlregistration.h>
#include <atomic>
#include <functional>
#include <map>

namespace spile::support {

/// Places for day files in a test: one folder for what goes, one for what comes.
class TestPlaces final : public viewmodels::FilePlaces {
public:
    explicit TestPlaces(Path folder) : folder_(std::move(folder)) {}

    [[nodiscard]] std::vector<Place> targets() override;
    [[nodiscard]] std::vector<Found> dayFiles() override;
    [[nodiscard]] std::uint64_t freeBytes() override { return free; }

    std::uint64_t free = std::uint64_t{1} << 40U;

private:
    Path folder_;
};

/// The app with all that is real but the clock, keys and places: for QML tests of its screens.
class TestApp : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(spile::viewmodels::AppViewModel* app READ app NOTIFY appChanged FINAL)
    /// Where day files are handed over to and found.
    Q_PROPERTY(QString stick READ stick CONSTANT FINAL)

public:
    explicit TestApp(QObject* parent = nullptr);
    ~TestApp() override;

    [[nodiscard]] viewmodels::AppViewModel* app() { return app_.get(); }
    [[nodiscard]] QString stick() const;

    /// A new device without a cellar, at its first run.
    Q_INVOKABLE void beginEmpty();
    /// A new device whose cellar has the person Ada and `barrels` full ones, "Rum 1" and so on,
    /// each filled 200 days ago, tasted `tastings` times since.
    Q_INVOKABLE void beginWithBarrels(int barrels, int tastings);
    /// Besides: a full barrel of which nobody said what it holds.
    Q_INVOKABLE void addBarrelOfUnknownBeer(const QString& mark);
    /// Besides: a lot of 100 L out of the barrel with that mark, with coconut that is to come out
    /// in a week, and 120 bottles of 500 mL with that code.
    Q_INVOKABLE void addLot(const QString& name, const QString& mark, const QString& lotCode);
    /// Besides: Ada has found that fault in the barrel with this mark.
    Q_INVOKABLE void tellFault(const QString& mark, const QString& fault);
    /// Besides: what another device leaves to be decided here, by its number in cellar::Unsettled.
    Q_INVOKABLE void leaveToSettle(int what);
    /// Besides: another phone that is let in.
    Q_INVOKABLE void addPhone(const QString& name);
    /// Besides: the same, its clock so far ahead; it has drawn of a barrel, and the stick has its
    /// day file.
    Q_INVOKABLE void phoneAheadOnStick(const QString& name, int minutes);
    /// Besides: another phone that was cut off and has drawn of a barrel since; the stick has its
    /// day file.
    Q_INVOKABLE void cutOffPhoneOnStick(const QString& name);
    /// From now on this is a phone that has joined the cellar and is not let in.
    Q_INVOKABLE void joinAsPhone();
    /// Another desk has cut this device off.
    Q_INVOKABLE void cutOffByOther();
    /// This device is set back to an earlier state; the stick has what it recorded since.
    Q_INVOKABLE void setBackWithFileOnStick();
    /// A newer version has written the cellar.
    Q_INVOKABLE void becomeNewer();
    /// The id and the code, as it is shown, of the barrel with this mark.
    Q_INVOKABLE QString idOf(const QString& mark);
    Q_INVOKABLE QString codeOf(const QString& mark);
    /// End the app and start it again on the same folder.
    Q_INVOKABLE void restart();
    /// True once nothing that was asked for is outstanding; for tryVerify.
    Q_INVOKABLE bool isSettled() const;

    /// Let the beer of the barrels have that window for `attribute`.
    Q_INVOKABLE void giveWindow(const QString& attribute, int low, int high);
    /// Compute the outlooks of all barrels now.
    Q_INVOKABLE void learnOutlooks();
    Q_INVOKABLE bool hasLearned() const;
    /// How many days after their fill the barrels were first tasted.
    Q_INVOKABLE int dayOfFirstScore() const;
    /// A laboratory is waited for; its results come.
    Q_INVOKABLE void holdLot(const QString& lotId, const QString& reason);
    Q_INVOKABLE void clearHolds(const QString& lotId);
    /// How many records there are in the cellar.
    Q_INVOKABLE int recordCount();

    Q_INVOKABLE void passSeconds(int seconds);
    /// Set the wall clock, not the time since the machine started.
    Q_INVOKABLE void jumpClock(int minutes);
    /// A bit of the newest draw flips on the disk.
    Q_INVOKABLE void spoilNewestDraw();
    Q_INVOKABLE void setApplicationState(int state);
    Q_INVOKABLE void setFreeBytes(double bytes);
    /// Make the ballast; the app itself does it after a while.
    Q_INVOKABLE void keepBallast();
    /// From now on every write to the disk fails for want of room, until the ballast is given up if
    /// there is one.
    Q_INVOKABLE void fillDisk();
    /// The same for records alone: what is written beside them has just found the last room.
    Q_INVOKABLE void fillDiskForRecords();
    /// From now on the disk refuses to lock, as one that can only be read does.
    Q_INVOKABLE void refuseDisk();
    Q_INVOKABLE void mendDisk();
    /// Let every text be 40 % longer, as a long language has it.
    Q_INVOKABLE void useLongWords();
    Q_INVOKABLE void usePlainWords();
    /// The path of a picture of the head of the barrel with that mark, and of a film: see HeadFilm.
    Q_INVOKABLE QString headPicture(const QString& mark);
    Q_INVOKABLE QString headFilm(const QString& mark, bool hard);
    Q_INVOKABLE QString samplePicture();
    /// What `spile-desk --json` answers, in its own folder of this test.
    Q_INVOKABLE QString desk(const QStringList& arguments);
    Q_INVOKABLE QStringList stickFiles() const;
    Q_INVOKABLE QString contentOf(const QString& file) const;
    /// The join code of a phone that has joined and waits to be let in; what its symbol says in the
    /// cellar with that mark; a picture of such a symbol; and what is read on the window of `root`.
    Q_INVOKABLE QString newPhone();
    Q_INVOKABLE QString symbolText(const QString& code, const QString& mark) const;
    Q_INVOKABLE QString symbolPicture(const QString& text) const;
    Q_INVOKABLE QStringList symbolsOn(QObject* root) const;
    /// What the owner's symbol may say.
    Q_INVOKABLE QString ownersSymbol() const;
    /// The texts of the symbols that are read when a PDF file is printed, page by page.
    Q_INVOKABLE QStringList symbolsIn(const QString& file) const;
    /// Put a copy of the file where it outlives this device; return its path.
    Q_INVOKABLE QString carried(const QString& file) const;
    /// How many shared objects of that name are mapped into this process.
    Q_INVOKABLE int mapped(const QString& library) const;
    /// Texts of all visible items of `root`, one a line.
    Q_INVOKABLE QString allTexts(QObject* root) const;
    /// What a screen reader has of the window of `root`, one a line: names and descriptions.
    Q_INVOKABLE QString allNames(QObject* root) const;

signals:
    void appChanged();

private:
    struct KnownBarrel {
        SubjectId barrel;
        std::string code;
    };
    void start();
    void useDisk();
    [[nodiscard]] bool isFull() const;
    // With the app ended meanwhile.
    void change(const std::function<void(cellar::Cellar&)>& what);
    void end();

    std::unique_ptr<TestDevice> device_;
    std::unique_ptr<FaultyFileSystem> disk_;
    Path ballast_;  // what the disk is full of, if that is known
    std::atomic<bool> onlyRecords_{false};
    std::atomic<bool> full_{false};  // last, since the threads ask for it first
    std::unique_ptr<TestPlaces> places_;
    std::unique_ptr<viewmodels::AppViewModel> app_;
    std::unique_ptr<QTranslator> longWords_;
    TempFolder deskFolder_;
    std::map<QString, KnownBarrel> barrels_;  // by their marks
    SubjectId ada_;
};

}  // namespace spile::support
