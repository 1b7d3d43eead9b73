#include "qml/viewmodels/photo_view_model.hpp"

#include "core/base/sha256.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/picture/encode.hpp"
#include "tests/gui/view_model_world.hpp"
#include "tests/support/thread_time.hpp"

#include <QDir>
#include <QFile>
#include <QSignalSpy>

using namespace spile;
using viewmodels::PhotoViewModel;

namespace {

class RoomToFill final : public viewmodels::FilePlaces {
public:
    [[nodiscard]] std::vector<Place> targets() override { return {}; }
    [[nodiscard]] std::vector<Found> dayFiles() override { return {}; }
    [[nodiscard]] std::uint64_t freeBytes() override { return free; }

    std::uint64_t free = std::uint64_t{1} << 40U;
};

const QString storageFull =
    "Photo not kept: storage is full. All that was kept before is safe. Free some space, then take "
    "it again.";

}  // namespace

class PhotoViewModelTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void keepsAPhotoOfABarrel();
    void keepsAPhotoOnAnOpenSheet();
    void takesAPhotoOfABarrelBack();
    void takesAPhotoOfASheetBack();
    void takesNoOtherTapBack();
    void refusesWithoutRoom();
    void saysWhenTheDiskIsFull();
    void refusesWhatIsNoPicture();
    void saysWhenTheCameraGaveNone();
    void doesNotShowAPhotoOnALaterPage();
    void keepsAPhotoOfFiftyMegapixelsWithoutHoldingUpTheScreen();

private:
    void keep(const Bytes& bytes = support::smallPicture());
    [[nodiscard]] QString put(const QString& folder, const Bytes& bytes);
    [[nodiscard]] std::vector<cellar::PhotoRow> photos();
    [[nodiscard]] std::size_t photosOnSheet();

    std::unique_ptr<support::ViewModelWorld> world_;
    RoomToFill places_;
    std::unique_ptr<PhotoViewModel> photo_;
    cellar::BarrelRow barrel_;
    SubjectId sheet_;
    QString file_;  // the temporary one of the last keep()
};

void PhotoViewModelTest::init()
{
    world_ = std::make_unique<support::ViewModelWorld>();
    QVERIFY(world_->waitUntilOpen());
    places_ = {};
    photo_ = std::make_unique<PhotoViewModel>(world_->context, places_);
    const auto opened = world_->act([&](cellar::Cellar& cellar) {
        return cellar::openSheet(cellar, world_->small.barrel, world_->small.person);
    });
    QVERIFY(opened.has_value());
    sheet_ = *opened;
    const auto row = world_->act([&](cellar::Cellar& cellar) {
        return cellar::barrelById(cellar.database(), world_->small.barrel);
    });
    QVERIFY(row.has_value() && row->has_value());
    barrel_ = **row;
}

void PhotoViewModelTest::cleanup()
{
    photo_.reset();
    world_.reset();
}

QString PhotoViewModelTest::put(const QString& folder, const Bytes& bytes)
{
    QFile file(QDir(folder).filePath("photo.jpg"));
    if (file.open(QIODevice::WriteOnly)) {
        file.write(reinterpret_cast<const char*>(bytes.data()),
                   static_cast<qsizetype>(bytes.size()));
    }
    return file.fileName();
}

void PhotoViewModelTest::keep(const Bytes& bytes)
{
    const QString folder = photo_->take();
    QVERIFY(!folder.isEmpty());
    QVERIFY(photo_->isBusy());
    QVERIFY(photo_->take().isEmpty());  // one at a time
    file_ = put(folder, bytes);
    photo_->keep(file_);
    QVERIFY(photo_->isBusy());
    QTRY_VERIFY_WITH_TIMEOUT(!photo_->isBusy(), 20000);
}

std::vector<cellar::PhotoRow> PhotoViewModelTest::photos()
{
    const auto history = world_->act([&](cellar::Cellar& cellar) {
        return cellar::historyOf(cellar.database(), world_->small.barrel);
    });
    return history ? history->photos : std::vector<cellar::PhotoRow>();
}

std::size_t PhotoViewModelTest::photosOnSheet()
{
    const auto content =
        world_->act([&](cellar::Cellar& cellar) { return cellar::readSheet(cellar, sheet_); });
    return content ? content->photos.size() : 99;
}

void PhotoViewModelTest::keepsAPhotoOfABarrel()
{
    photo_->beginForBarrel(barrel_, world_->small.person);
    QCOMPARE(photo_->barrelName(), "Rum 3");
    QCOMPARE(photo_->purposes().size(), 2);
    photo_->setPurpose(2);  // there is none
    photo_->setPurpose(1);
    keep();
    QCOMPARE(photo_->errorText(), "");
    QVERIFY(photo_->isKept());
    QVERIFY(QFile::exists(photo_->pictureUrl().toLocalFile()));
    QVERIFY(!QFile::exists(file_));  // the temporary one
    const auto kept = photos();
    QCOMPARE(kept.size(), std::size_t{1});
    QCOMPARE(kept[0].purpose, "place");
    QCOMPARE(kept[0].person, "Ada");
    QVERIFY(kept[0].here);
    QVERIFY(!photo_->canTake());
    photo_->another();
    QVERIFY(photo_->canTake());
    QVERIFY(photo_->pictureUrl().isEmpty());
}

void PhotoViewModelTest::keepsAPhotoOnAnOpenSheet()
{
    QSignalSpy kept(photo_.get(), &PhotoViewModel::keptOnSheet);
    photo_->beginForSheet(barrel_, sheet_);
    QVERIFY(photo_->purposes().isEmpty());
    keep();
    QVERIFY(photo_->isKept());
    QVERIFY(QFile::exists(photo_->pictureUrl().toLocalFile()));
    QVERIFY(!QFile::exists(file_));
    QCOMPARE(kept.size(), 1);
    QCOMPARE(photosOnSheet(), std::size_t{1});
    QCOMPARE(photos().size(), std::size_t{0});  // not before the sheet is closed
}

void PhotoViewModelTest::takesAPhotoOfABarrelBack()
{
    photo_->beginForBarrel(barrel_, {});
    keep();
    QCOMPARE(photos().size(), std::size_t{1});
    photo_->undo();
    QVERIFY(!photo_->isKept());
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(photos().size(), std::size_t{0});
    QVERIFY(world_->notice.isUndoable());
}

void PhotoViewModelTest::takesAPhotoOfASheetBack()
{
    photo_->beginForSheet(barrel_, sheet_);
    keep();
    QSignalSpy kept(photo_.get(), &PhotoViewModel::keptOnSheet);
    photo_->undo();
    QTRY_VERIFY(!photo_->isKept());
    QCOMPARE(photosOnSheet(), std::size_t{0});
    QCOMPARE(kept.size(), 1);
}

void PhotoViewModelTest::takesNoOtherTapBack()
{
    photo_->beginForSheet(barrel_, sheet_);
    keep();
    const auto tapped = world_->act([&](cellar::Cellar& cellar) {
        return cellar::tapScore(cellar, sheet_, "oak", cellar::Score{7});
    });
    QVERIFY(tapped.has_value());
    photo_->undo();
    QTRY_VERIFY(!photo_->isBusy());
    const auto content =
        world_->act([&](cellar::Cellar& cellar) { return cellar::readSheet(cellar, sheet_); });
    QVERIFY(content.has_value());
    QCOMPARE(content->taste.scores.size(), std::size_t{1});
    QCOMPARE(content->photos.size(), std::size_t{1});
}

void PhotoViewModelTest::refusesWithoutRoom()
{
    photo_->beginForSheet(barrel_, sheet_);
    places_.free = PhotoViewModel::leastFreeBytes - 1;
    QVERIFY(photo_->take().isEmpty());
    QCOMPARE(photo_->errorText(), storageFull);
    QVERIFY(!photo_->isBusy());
    places_.free = PhotoViewModel::leastFreeBytes;
    keep();
    QCOMPARE(photo_->errorText(), "");
    QVERIFY(photo_->isKept());
}

void PhotoViewModelTest::saysWhenTheDiskIsFull()
{
    photo_->beginForSheet(barrel_, sheet_);
    world_->disk.failAt(
        {.call = support::FileCall::Append, .code = ErrorCode::StorageFull, .lasting = true});
    keep();
    QVERIFY(!photo_->isKept());
    QCOMPARE(photo_->errorText(), storageFull);
    QVERIFY(!QFile::exists(file_));
    world_->disk.failNever();
    QCOMPARE(photosOnSheet(), std::size_t{0});
    keep();
    QVERIFY(photo_->isKept());
}

void PhotoViewModelTest::refusesWhatIsNoPicture()
{
    photo_->beginForBarrel(barrel_, {});
    keep({1, 2, 3});
    QVERIFY(!photo_->isKept());
    QVERIFY(photo_->errorText().startsWith("Photo not kept"));
    QVERIFY(photo_->canTake());
    QVERIFY(!QFile::exists(file_));
}

void PhotoViewModelTest::saysWhenTheCameraGaveNone()
{
    photo_->beginForBarrel(barrel_, {});
    QVERIFY(!photo_->take().isEmpty());
    photo_->takingFailed();
    QVERIFY(!photo_->errorText().isEmpty());
    QVERIFY(photo_->canTake());
}

void PhotoViewModelTest::doesNotShowAPhotoOnALaterPage()
{
    photo_->beginForBarrel(barrel_, {});
    photo_->keep(put(photo_->take(), support::smallPicture()));
    photo_->beginForSheet(barrel_, sheet_);
    QTRY_VERIFY(!world_->workers.isBusy());
    QVERIFY(!photo_->isKept());
    QCOMPARE(photos().size(), std::size_t{1});
}

void PhotoViewModelTest::keepsAPhotoOfFiftyMegapixelsWithoutHoldingUpTheScreen()
{
    picture::Image large{8192, 6144, picture::PixelFormat::Grey8, {}};
    large.pixels.resize(std::size_t{8192} * 6144);
    std::uint8_t grain = 0;
    for (std::uint8_t& pixel : large.pixels) {
        pixel = grain += 37;
    }
    const auto jpeg = picture::encodeJpeg(large, 80);
    QVERIFY(jpeg.has_value());
    photo_->beginForBarrel(barrel_, {});
    const QString file = put(photo_->take(), *jpeg);
    const double hashing = support::threadSeconds([&] { std::ignore = sha256(*jpeg); });
    const double keeping = support::threadSeconds([&] { photo_->keep(file); });
    QVERIFY2(4 * keeping < hashing,  // it is neither read nor hashed in the screen's thread
             qPrintable(QStringLiteral("%1 s beside %2 s").arg(keeping).arg(hashing)));
    QVERIFY(photo_->isBusy());
    QTRY_VERIFY_WITH_TIMEOUT(photo_->isKept(), 30000);
}

QTEST_GUILESS_MAIN(PhotoViewModelTest)
#include "photo_view_model_test.moc"
