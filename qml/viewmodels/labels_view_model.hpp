#pragma once

#include "core/labels/sheets.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/file_places.hpp"

#include <QObject>
#include <QSizeF>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Labels for barrels, written as a PDF file: for which, on what, and read from how far. Nothing of
/// it is recorded.
class LabelsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QList<QString> subjects READ subjects NOTIFY changed FINAL)
    Q_PROPERTY(int subject READ subject NOTIFY changed FINAL)
    Q_PROPERTY(bool spares READ isForSpares NOTIFY changed FINAL)
    Q_PROPERTY(QString spareCount READ spareCount NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> kinds READ kinds NOTIFY changed FINAL)
    Q_PROPERTY(int kind READ kind NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> stocks READ stocks NOTIFY changed FINAL)
    Q_PROPERTY(int stock READ stock NOTIFY changed FINAL)
    Q_PROPERTY(QString distance READ distance NOTIFY changed FINAL)
    Q_PROPERTY(QString distanceUnit READ distanceUnit NOTIFY changed FINAL)
    Q_PROPERTY(QString distanceStep READ distanceStep NOTIFY changed FINAL)
    Q_PROPERTY(QString bigDistanceStep READ bigDistanceStep NOTIFY changed FINAL)
    /// Whether a sheet that was begun can be gone on with, and its first free label.
    Q_PROPERTY(bool onSheet READ isOnSheet NOTIFY changed FINAL)
    Q_PROPERTY(QString from READ from NOTIFY changed FINAL)
    Q_PROPERTY(bool testPage READ hasTestPage NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> folders READ folders NOTIFY changed FINAL)
    Q_PROPERTY(int folder READ folder NOTIFY changed FINAL)
    /// One label as it is printed: all that is black, as path data, on that many mm of white.
    Q_PROPERTY(QString picture READ picture NOTIFY changed FINAL)
    Q_PROPERTY(QSizeF pictureSize READ pictureSize NOTIFY changed FINAL)
    /// "99 × 68 mm, two symbols with modules of 1.2 mm"
    Q_PROPERTY(QString pictureText READ pictureText NOTIFY changed FINAL)
    /// "36 labels on 5 pages"
    Q_PROPERTY(QString countText READ countText NOTIFY changed FINAL)
    /// Why there can be no file; empty if there can.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool writing READ isWriting NOTIFY changed FINAL)
    /// The file that was written now: its name, and where it is and what is in it; empty: none yet.
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed FINAL)
    Q_PROPERTY(QString fileText READ fileText NOTIFY changed FINAL)
    Q_PROPERTY(QString filePath READ filePath NOTIFY changed FINAL)
    /// The marks in which boxes stand for characters; empty: none.
    Q_PROPERTY(QString incompleteText READ incompleteText NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    LabelsViewModel(Context& context, FilePlaces& places, QObject* parent = nullptr);

    /// Begin anew: with that barrel, or with all of them. The stock and the distance stay.
    void begin(std::optional<labels::LabelWords> barrel);

    Q_INVOKABLE void chooseSubject(int index);
    Q_INVOKABLE void chooseKind(int index);
    Q_INVOKABLE void chooseStock(int index);
    Q_INVOKABLE void chooseFolder(int index);
    Q_INVOKABLE void stepSpares(int count);
    Q_INVOKABLE void stepDistance(int count);
    Q_INVOKABLE void stepFrom(int count);
    Q_INVOKABLE void toggleTestPage();
    Q_INVOKABLE void write();

    [[nodiscard]] QStringList subjects() const;
    [[nodiscard]] int subject() const { return subject_; }
    [[nodiscard]] bool isForSpares() const { return chosen() == Subject::Spares; }
    [[nodiscard]] QString spareCount() const { return context_.formats.locale.toString(spares_); }
    [[nodiscard]] QStringList kinds() const;
    [[nodiscard]] int kind() const;
    [[nodiscard]] QStringList stocks() const;
    [[nodiscard]] int stock() const;
    [[nodiscard]] QString distance() const;
    [[nodiscard]] QString distanceUnit() const;
    [[nodiscard]] QString distanceStep() const;
    [[nodiscard]] QString bigDistanceStep() const;
    [[nodiscard]] bool isOnSheet() const { return stock_.kind == labels::StockKind::Sheet; }
    [[nodiscard]] QString from() const { return context_.formats.locale.toString(from_); }
    [[nodiscard]] bool hasTestPage() const { return testPage_; }
    [[nodiscard]] QStringList folders() const;
    [[nodiscard]] int folder() const { return folder_; }
    [[nodiscard]] QString picture() const { return picture_; }
    [[nodiscard]] QSizeF pictureSize() const { return pictureSize_; }
    [[nodiscard]] QString pictureText() const { return pictureText_; }
    [[nodiscard]] QString countText() const { return countText_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isWriting() const { return writing_; }
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] QString fileText() const { return fileText_; }
    [[nodiscard]] QString filePath() const { return QString::fromStdString(file_.string()); }
    [[nodiscard]] QString incompleteText() const { return incompleteText_; }
    [[nodiscard]] QString error() const { return error_; }

signals:
    void changed();

private:
    enum class Subject : std::uint8_t { ThisBarrel, AllBarrels, Spares };
    struct Records {
        std::string cellarMark;
        std::vector<labels::LabelWords> barrels;
    };
    struct Written {
        Path file;
        std::uint64_t bytes = 0;
        std::size_t labels = 0, pages = 0;
        std::vector<std::string> incomplete;
    };

    [[nodiscard]] Subject chosen() const;
    [[nodiscard]] bool us() const { return context_.formats.units == Formats::Units::Us; }
    [[nodiscard]] QString said(const labels::Stock& stock) const;
    [[nodiscard]] QString lengthText(Length length) const;
    [[nodiscard]] labels::Order order() const;
    [[nodiscard]] std::size_t labelCount() const;
    [[nodiscard]] QString problemOf(const Error& error) const;
    static Result<Records> readRecords(cellar::Cellar& cellar);
    void forget();
    void show();
    void showPicture(const labels::Fitted& fitted);
    void writeOrder(labels::Order order);
    void tell(const Result<Written>& written, const QString& folder);

    Context& context_;
    FilePlaces& places_;
    Records records_;
    std::optional<labels::LabelWords> barrel_;
    std::vector<FilePlaces::Place> folders_;
    labels::Stock stock_;
    Length distance_ = metres(0.6);
    int subject_ = 0;
    int spares_ = 10;
    int from_ = 1;
    int folder_ = 0;
    bool testPage_ = false;
    bool loaded_ = false;
    bool writing_ = false;
    QString picture_, pictureText_, countText_, problem_;
    QSizeF pictureSize_;
    Path file_;
    QString fileText_, incompleteText_, error_;
};

}  // namespace spile::viewmodels
