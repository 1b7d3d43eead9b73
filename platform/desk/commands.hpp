#pragma once

#include "core/labels/stock.hpp"
#include "platform/desk/session.hpp"

#include <optional>
#include <string>
#include <vector>

/// The desk's commands: each answers through the session and returns the exit.
namespace spile::desk {

struct NewOptions {
    std::string name = "Cellar";
    std::string mark;
    std::string device = "Desk";
};
[[nodiscard]] int makeNew(Session& session, const NewOptions& options);

struct DemoOptions {
    std::uint64_t seed = 7;
    std::string phones;  // folder for the phones' cellars; empty: they are not kept
};
[[nodiscard]] int makeDemo(Session& session, const DemoOptions& options);

/// `passphrase` is for one that is sealed; `restores`: the file is a backup of what was lost.
[[nodiscard]] int join(Session& session, const std::string& dayFile, const std::string& passphrase,
                       bool restores);

/// The owner's key: the file owner.key or what stands on its sheet; or a picture of its symbol.
struct OwnerKeyOptions {
    std::string words;
    std::string picture;
};

struct AdmitOptions {
    std::string code;     // as it was typed; empty: the symbol on `picture`
    std::string picture;  // a JPEG or PNG file
    std::string name;
    bool desk = false;
    OwnerKeyOptions ownerKey;  // none: this desk admits it
};
[[nodiscard]] int admit(Session& session, const AdmitOptions& options);

/// `passphrase` is for those that are sealed.
[[nodiscard]] int takeIn(Session& session, const std::vector<std::string>& dayFiles,
                         const std::string& passphrase);
struct HandOutOptions {
    std::string dayFile;
    std::string to;       // a device's name or the beginning of its id; empty: for everybody
    bool sealed = false;  // under a new passphrase, which is shown
    bool backup = false;  // it is to be whole
};
[[nodiscard]] int handOut(Session& session, const HandOutOptions& options);
/// Everything in plain files: records, tables and photos.
[[nodiscard]] int exportAll(Session& session, const std::string& folder);

struct SettleOptions {
    std::string key;         // of one that is to be settled; empty: all are listed
    std::size_t choice = 0;  // from 1; 0: its choices are listed
    std::string name;        // what a device that is admitted is called
};
/// What several devices have left for a person to decide.
[[nodiscard]] int settle(Session& session, const SettleOptions& options);
struct CutOptions {
    std::string device;  // its name or the beginning of its id
    std::string reason;
    std::optional<std::uint64_t> lastSeq;
    OwnerKeyOptions ownerKey;  // of reinstate
};
/// What a lost device records from now on counts nowhere.
[[nodiscard]] int cutOff(Session& session, const CutOptions& options);
struct AdoptOptions {
    std::string device;
    std::vector<std::string> records;  // each by the beginning of its id
    bool all = false;
};
/// What is set aside of a device counts: all, or some records; without either, they are listed.
[[nodiscard]] int adopt(Session& session, const AdoptOptions& options);
struct OwnerSheetOptions {
    std::string pdf;      // a new file
    bool letter = false;  // US Letter instead of A4
};
/// Write the owner's key as a page to print and put away.
[[nodiscard]] int ownerSheet(Session& session, const OwnerSheetOptions& options);
/// A device that was cut off counts again with all its records.
[[nodiscard]] int reinstate(Session& session, const CutOptions& options);

struct ClockOptions {
    std::string device;  // its name or the beginning of its id; empty: this one
    std::string shows;   // "2026-03-14 14:02", in this machine's zone
    std::string right;   // the same
    bool takeBack = false;
};
/// What is known of the devices' clocks; or say what one shows, what is right, or take it back.
[[nodiscard]] int clock(Session& session, const ClockOptions& options);

[[nodiscard]] int check(Session& session);
/// The devices, what they may do, and when each recorded last by its clock.
[[nodiscard]] int showDevices(const Session& session, cellar::Cellar& cellar);
[[nodiscard]] int show(Session& session, const std::string& kind, const std::string& id);
/// The flights that there were, the newest first: which glass is of which barrel.
[[nodiscard]] int showFlights(const Session& session, cellar::Cellar& cellar);
/// What the tasters are like, and how far they agree.
[[nodiscard]] int showTasters(const Session& session, cellar::Cellar& cellar);
/// The lots, the newest first; and all of one.
[[nodiscard]] int showLots(const Session& session, cellar::Cellar& cellar);
[[nodiscard]] int showLot(const Session& session, cellar::Cellar& cellar, const std::string& typed);
/// Until its result is in, nothing of the lot is packaged or released.
[[nodiscard]] int holdLot(Session& session, const std::string& typed, const std::string& reason);
struct ClearOptions {
    std::string lot;
    std::string result;
    std::string reason;  // which of several holds; empty: the only one
};
[[nodiscard]] int clearLot(Session& session, const ClearOptions& options);

struct TraceOptions {
    std::string what;  // a lot code, lot, barrel, beer or substance
    bool down = false;
    bool recall = false;
};
[[nodiscard]] int traceBeer(Session& session, const TraceOptions& options);

struct ReportOptions {
    std::string name;      // "duty", "losses", "costs", "lots"
    std::string from, to;  // days, both of them counted; empty: the last twelve months
    std::string by = "month";
};
[[nodiscard]] int report(Session& session, const ReportOptions& options);

/// `on` is a day, "2026-03-14"; empty: today. The outlooks are computed anew first.
[[nodiscard]] int due(Session& session, const std::string& on);
/// The outlook of the barrel with that code, or in short those of all if it is empty.
[[nodiscard]] int outlook(Session& session, const std::string& barrel);
/// Compute the outlooks of all barrels and keep them, so that the due list goes by them.
///
/// Errors    those of outlook::calendarOf() and of every act.
[[nodiscard]] Result<void> foresee(const Session& session, cellar::Cellar& cellar);
[[nodiscard]] int read(Session& session, const std::vector<std::string>& images);

struct LabelOptions {
    std::string out;
    std::vector<std::string> barrels;  // each by its code or its mark
    bool all = false;
    std::optional<int> spares;
    std::string stock{labels::usualPlate};
    double distance = 0.6;  // m
    int from = 1;
    bool testPage = false;
    bool force = false;
    bool listStock = false;
};
[[nodiscard]] int makeLabels(Session& session, const LabelOptions& options);

struct BenchOptions {
    std::string spec;  // a file: see bench_spec.hpp
    std::size_t answers = 10;
    double seconds = 20;  // after which the best so far is given
};
/// Which barrels come nearest to a target. Needs no cellar.
[[nodiscard]] int bench(Session& session, const BenchOptions& options);

struct CellarBenchOptions {
    std::string target;  // a beer's, by its name
    std::size_t most = 3;
    bool part = false;
    std::optional<double> volumeMin, volumeMax;  // L
    std::optional<double> abvMin, abvMax;        // % vol
    std::vector<std::string> keep;               // codes of barrels that are kept back
    double seconds = 20;
};
/// The same of the cellar's own barrels: several that differ, with what each costs.
[[nodiscard]] int benchOfCellar(Session& session, const CellarBenchOptions& options);

/// `words` are what stands after "work": a calculator's name and its inputs as "--name value",
/// "--name=value" or "name=value"; none: they are listed. Needs no cellar.
[[nodiscard]] int work(const Session& session, std::vector<std::string> words);

}  // namespace spile::desk
