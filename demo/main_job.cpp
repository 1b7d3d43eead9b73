// The main job without a screen, on the invented cellar: from the code on a barrel's head to a
// desk that has both tastings and the photo. Prints what it does; leaves all of it in one folder.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/queries.hpp"
#include "core/picture/decode.hpp"
#include "core/scan/reader.hpp"
#include "demo/cellar/growing.hpp"
#include "demo/cellar/invented.hpp"
#include "demo/cellar/world.hpp"
#include "platform/system/disk_file_system.hpp"

#include <algorithm>
#include <charconv>
#include <iostream>
#include <nlohmann/json.hpp>

namespace {

using namespace spile;
using namespace spile::demo;

Result<void> writeText(FileSystem& files, const Path& path, const std::string& text)
{
    return writeWhole(files, path, asBytes(text));
}

void say(const std::string& text)
{
    std::cout << text << std::endl;
}  // at once: each step as it is done

class MainJob {
public:
    MainJob(World& world, FileSystem& files, Path out)
        : world_(world), files_(files), out_(std::move(out))
    {
    }

    Result<void> run()
    {
        world_.moveTo(demo::days, std::chrono::hours(9));
        choose();
        SPILE_TRY(photographHead());
        SPILE_TRY(readHead());
        SPILE_TRY(findBarrel());
        SPILE_TRY(draw());
        SPILE_TRY(taste(world_.ada(), 0));
        SPILE_TRY(photograph());
        SPILE_TRY(taste(world_.kim(), 1));
        SPILE_TRY(handOut());
        SPILE_TRY(takeIn());
        return report();
    }

private:
    // The barrel that has been in the longest and is still full.
    void choose()
    {
        const auto& all = world_.barrels();
        barrel_ = &*std::min_element(
            all.begin(), all.end(), [](const InventedBarrel& a, const InventedBarrel& b) {
                return a.filledOnDay.value_or(demo::days) < b.filledOnDay.value_or(demo::days);
            });
    }

    Result<void> photographHead()
    {
        SPILE_ASSIGN(picture, world_.headPicture(*barrel_, 1600, 1200));
        SPILE_TRY(writeWhole(files_, headFile(), picture));
        say("A barrel's head is photographed: " + headFile().string());
        return {};
    }

    Result<void> readHead()
    {
        SPILE_ASSIGN(bytes, readWhole(files_, headFile(), picture::Limits().bytes));
        SPILE_ASSIGN(image, picture::decode(bytes, {picture::PixelFormat::Grey8}));
        SPILE_ASSIGN(codes, scan::readPicture(picture::viewOf(image)));
        for (const scan::Code& code : codes) {
            if (const auto label = scan::ownLabel(code);
                label && label->cellarMark == world_.ada().cellar->identity().mark) {
                code_ = label->code;
            }
        }
        if (code_.empty()) {
            return fail(ErrorCode::NotFound, "code", headFile().string(), "a label in the picture");
        }
        say("Its label says " + scan::shown(code_) + ".");
        return writeText(files_, out_ / "code.txt", code_ + "\n");
    }

    Result<void> findBarrel()
    {
        SPILE_ASSIGN(found, cellar::barrelsWithCode(world_.ada().cellar->database(), code_));
        if (found.empty()) {
            return fail(ErrorCode::NotFound, "barrel", code_);
        }
        found_ = found.front();
        say("Ada's phone knows it: " + found_.mark + ", " + found_.beer + ", in " + found_.place +
            "; next: " + found_.nextStep + ".");
        return {};
    }

    Result<void> draw()
    {
        say("Caution before the draw: ease the pressure, keep flames away, air the room; local "
            "rules "
            "come first.");
        cellar::NewDraw draw{found_.barrel, millilitres(200), "sample hole", {}, {}, {}};
        draw.circumstance.person = world_.people().at(0);
        SPILE_TRY(cellar::recordDraw(*world_.ada().cellar, draw));
        world_.pass(std::chrono::minutes(2));
        say("Ada draws 200 mL at the sample hole.");
        return {};
    }

    // Every tap is durable before the next; closing the sheet makes one record of it.
    Result<void> taste(Device& phone, std::size_t person)
    {
        cellar::Cellar& own = *phone.cellar;
        SPILE_ASSIGN(sheet, cellar::openSheet(own, found_.barrel, world_.people().at(person)));
        std::vector<std::string> order;
        for (std::size_t i = 0; i < courses.size(); ++i) {
            order.emplace_back(courses.at((i + person) % courses.size()).attribute);
        }
        SPILE_TRY(cellar::keepOrder(own, sheet, order));
        std::string said;
        for (std::size_t i = 0; i < courses.size(); ++i) {
            const std::size_t course = (i + person) % courses.size();
            const int score = world_.scoreOf(*barrel_, course, person, demo::days);
            SPILE_TRY(cellar::tapScore(own, sheet, order.at(i), score));
            said += (said.empty() ? "" : ", ") + order.at(i) + " " + std::to_string(score);
            world_.pass(std::chrono::seconds(6));
        }
        SPILE_ASSIGN(id, cellar::closeSheet(own, sheet));
        taste_ = id;
        say(std::string(demo::people.at(person)) + " scores on " + phone.name + ": " + said + ".");
        return {};
    }

    Result<void> photograph()
    {
        SPILE_ASSIGN(picture, world_.samplePicture(*barrel_, 1200, 1600));
        SPILE_TRY(writeWhole(files_, out_ / "sample.jpg", picture));
        cellar::NewPhoto photo{found_.barrel, picture, "colour", taste_, {}};
        photo.circumstance.person = world_.people().at(0);
        SPILE_ASSIGN(recorded, cellar::recordPhoto(*world_.ada().cellar, photo));
        photo_ = recorded.photo;
        say("Ada photographs the sample: " + std::to_string(photo_.bytes) + " bytes, " +
            photo_.hash.hex().substr(0, 8) + ".");
        return {};
    }

    Result<void> handOut()
    {
        const DeviceId desk = world_.desk().cellar->ledger().device();
        for (Device* phone : {&world_.ada(), &world_.kim()}) {
            SPILE_ASSIGN(out, cellar::handOut(*phone->cellar, fileOf(*phone), desk));
            say(phone->name + " hands out a day file: " + std::to_string(out.file.entries) +
                " records, " + std::to_string(out.file.photos) + " photos.");
        }
        return {};
    }

    // In the other order than they were made, and one of them twice.
    Result<void> takeIn()
    {
        for (Device* phone : {&world_.kim(), &world_.ada(), &world_.kim()}) {
            SPILE_ASSIGN(taken, cellar::takeIn(*world_.desk().cellar, fileOf(*phone)));
            say("The desk takes in " + fileOf(*phone).filename().string() + ": " +
                std::to_string(taken.added) + " records added, " + std::to_string(taken.known) +
                " known, " + std::to_string(taken.photos) + " photos new.");
        }
        return {};
    }

    Result<void> report()
    {
        cellar::Cellar& desk = *world_.desk().cellar;
        SPILE_ASSIGN(history, cellar::historyOf(desk.database(), found_.barrel));
        SPILE_ASSIGN(checked, cellar::check(desk, {}));
        const Instant since = world_.desk().clock.now() - std::chrono::hours(2);
        nlohmann::json tastings = nlohmann::json::array();
        for (const cellar::TasteRow& taste : history.tastings) {
            if (taste.at > since) {
                nlohmann::json scores = nlohmann::json::object();
                for (const auto& [attribute, score] : taste.scores) {
                    scores[attribute] = score ? nlohmann::json(*score) : nlohmann::json();
                }
                tastings.push_back(
                    {{"taster", taste.person}, {"device", taste.device}, {"scores", scores}});
            }
        }
        const bool photoAtDesk =
            std::any_of(history.photos.begin(), history.photos.end(),
                        [&](const auto& photo) { return photo.hash == photo_.hash && photo.here; });
        const nlohmann::json report = {{"code", code_},
                                       {"mark", found_.mark},
                                       {"beer", found_.beer},
                                       {"new_tastings", tastings},
                                       {"photo_sha256", photo_.hash.hex()},
                                       {"photo_at_desk", photoAtDesk},
                                       {"entries", checked.entries},
                                       {"barrels", checked.barrels},
                                       {"devices", checked.devices},
                                       {"photos", checked.photos},
                                       {"state_root", checked.stateRoot.hex()},
                                       {"problems", checked.problems.size()}};
        SPILE_TRY(writeText(files_, out_ / "report.json", report.dump(2) + "\n"));
        if (tastings.size() != 2 || !photoAtDesk || !checked.problems.empty()) {
            return fail(ErrorCode::Conflict, "main job", "the desk does not have all of it",
                        "see report.json");
        }
        say("The desk has both tastings and the photo; its check of " +
            std::to_string(checked.entries) + " records finds no problem.");
        return {};
    }

    [[nodiscard]] Path headFile() const { return out_ / "head.jpg"; }
    [[nodiscard]] Path fileOf(const Device& phone) const
    {
        return out_ / (&phone == &world_.ada() ? "ada.spile" : "kim.spile");
    }

    World& world_;
    FileSystem& files_;
    Path out_;
    const InventedBarrel* barrel_ = nullptr;
    std::string code_;
    cellar::BarrelRow found_;
    EntryId taste_;
    ledger::PhotoRef photo_;
};

int fails(const Error& error)
{
    std::cerr << "spile-demo: " << error.subject << ": " << error.value << " " << error.limit
              << '\n';
    return 1;
}

// Barrels beyond the 36 of the history are registered at the desk and brought to the phones.
Result<void> grow(World& world, std::size_t barrels, std::uint64_t seed)
{
    const std::size_t known = world.barrelCount();
    if (barrels <= known) {
        return {};
    }
    world.moveTo(demo::days, std::chrono::hours(8));
    SPILE_TRY(growCellar(*world.desk().cellar, barrels - known, seed));
    say("The cellar has " + std::to_string(barrels) + " barrels.");
    return world.exchange();
}

struct Options {
    Path out;
    std::uint64_t seed = 7;
    std::size_t barrels = 0;
};

template <class Number>
bool readNumber(std::string_view text, Number& into)
{
    const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), into);
    return failed == std::errc() && end == text.data() + text.size();
}

// FOLDER [SEED] [--barrels N]
bool readOptions(std::vector<std::string_view> given, Options& options)
{
    const auto barrels = std::find(given.begin(), given.end(), "--barrels");
    if (barrels != given.end()) {
        if (given.end() - barrels < 2 || !readNumber(*(barrels + 1), options.barrels)) {
            return false;
        }
        given.erase(barrels, barrels + 2);
    }
    if (given.empty() || given.size() > 2) {
        return false;
    }
    options.out = given.front();
    return given.size() == 1 || readNumber(given.back(), options.seed);
}

int run(const Options& options)
{
    const Path& out = options.out;
    const std::uint64_t seed = options.seed;
    system::DiskFileSystem files;
    if (auto made = files.makeFolder(out); !made) {
        return fails(made.error());
    }
    say("Fourteen months pass in the invented cellar (seed " + std::to_string(seed) + ") ...");
    auto world = makeWorld(files, out / "desk.cellar", out, seed, {});
    if (!world) {
        return fails(world.error());
    }
    auto done = grow(**world, options.barrels, seed);
    if (done) {
        done = MainJob(**world, files, out).run();
    }
    return done ? 0 : fails(done.error());
}

}  // namespace

int main(int argc, char** argv)
{
    try {
        Options options;
        if (!readOptions({argv + 1, argv + argc}, options)) {
            std::cerr << "usage: spile-demo FOLDER [SEED] [--barrels N]\n";
            return 2;
        }
        return run(options);
    } catch (const std::exception& error) {  // from the libraries: out of memory
        std::cerr << "spile-demo: " << error.what() << '\n';
        return 1;
    }
}
