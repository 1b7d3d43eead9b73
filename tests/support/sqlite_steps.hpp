#pragma once

#include <cstdint>
#include <functional>
#include <sqlite3.h>

namespace spile::support {

/// How many instructions SQLite takes, all statements together of what is opened while this lives:
/// a measure of work that no other process disturbs.
class SqliteSteps {
public:
    SqliteSteps() { sqlite3_auto_extension(reinterpret_cast<void (*)()>(&watch)); }
    ~SqliteSteps() { sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(&watch)); }
    SqliteSteps(const SqliteSteps&) = delete;
    SqliteSteps& operator=(const SqliteSteps&) = delete;

    static std::int64_t of(const std::function<void()>& work)
    {
        taken_ = 0;
        work();
        return taken_;
    }

private:
    static int watch(sqlite3* opened, const char** /*error*/, const sqlite3_api_routines* /*api*/)
    {
        sqlite3_progress_handler(
            opened, 1,
            [](void*) {
                ++taken_;
                return 0;
            },
            nullptr);
        return SQLITE_OK;
    }
    inline static std::int64_t taken_ = 0;
};

}  // namespace spile::support
