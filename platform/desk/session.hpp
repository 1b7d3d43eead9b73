#pragma once

#include "core/base/id_source.hpp"
#include "core/base/job.hpp"
#include "core/base/outside.hpp"
#include "core/cellar/cellar.hpp"
#include "platform/desk/wording.hpp"
#include "platform/system/disk_file_system.hpp"
#include "platform/system/file_key_store.hpp"
#include "platform/system/system_clock.hpp"
#include "platform/system/system_random.hpp"

#include <nlohmann/json_fwd.hpp>
#include <string>

namespace spile::desk {

/// One run of the command: the machine it runs on, and how it answers.
class Session {
public:
    Session(Path cellarFolder, bool json);

    [[nodiscard]] Outside outside() { return {clock_, files_, random_, ids_, keys_}; }
    [[nodiscard]] FileSystem& files() { return files_; }
    [[nodiscard]] const Clock& clock() const { return clock_; }
    [[nodiscard]] const Path& cellarFolder() const { return folder_; }
    [[nodiscard]] bool json() const { return json_; }

    [[nodiscard]] Result<std::unique_ptr<cellar::Cellar>> open();

    /// Answer with `json` or with `text`, whichever was asked for.
    void answer(const nlohmann::json& json, const std::string& text) const;
    /// Answer with an error and return the exit that it means.
    /// Where the disk is full, the room that was kept for that is given up, so that the command can
    /// be given once more.
    [[nodiscard]] int refuse(const Error& error) const;
    /// Say something beside the answer, on the error stream.
    static void remark(const std::string& text);
    /// Before something is recorded: if this machine's clock is doubtful, say so beside the answer
    /// in one line, since it dates what comes.
    void doubtClock(cellar::Cellar& cellar) const;
    /// After a day's records: verify some more of what is stored, and keep room for a full disk.
    /// Say what is wrong beside the answer.
    void lookAfter(cellar::Cellar& cellar);
    /// A job that tells on the error stream how far it is, once it has taken a second.
    [[nodiscard]] Job job(const std::string& what) const;

private:
    Path folder_;
    bool json_;
    system::SystemClock clock_;
    mutable system::DiskFileSystem files_;  // holds nothing
    system::SystemRandom random_;
    Uuid7Source ids_{clock_, random_};
    system::FileKeyStore keys_;
};

}  // namespace spile::desk
