#include "platform/desk/clock_doubt.hpp"

namespace spile::desk {

std::string span(Milliseconds time)
{
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(std::chrono::abs(time));
    constexpr std::int64_t perHour = 60;
    constexpr std::int64_t perDay = 24 * perHour;
    const std::int64_t count = minutes.count();
    const std::string days = count < perDay ? "" : std::to_string(count / perDay) + " d ";
    return days + std::to_string(count % perDay / perHour) + " h " +
           std::to_string(count % perHour) + " min";
}

std::vector<SaidDoubt> doubtsSaid(const cellar::ClockDoubt& doubt)
{
    std::vector<SaidDoubt> said;
    if (doubt.behindOwn) {
        said.push_back({"This machine's clock stands before its own newest record, of " +
                            toIsoTime(*doubt.behindOwn) + ".",
                        {}});
    }
    if (doubt.jumped) {
        said.push_back({std::string("This machine's clock was set ") +
                            (doubt.jumped->count() < 0 ? "back" : "forward") + " by " +
                            span(*doubt.jumped) + " since its last record.",
                        "If it was wrong before: set it right, then\n"
                        "  spile-desk clock --right \"YYYY-MM-DD HH:MM\""});
    }
    if (doubt.ahead) {
        said.push_back({doubt.ahead->name + " recorded at " + toIsoTime(doubt.ahead->recorded) +
                            ", later than now: its clock is ahead, or this one's is behind.",
                        "See what it shows, then\n  spile-desk clock " +
                            doubt.ahead->device.hex().substr(0, 8) +
                            " --shows \"YYYY-MM-DD HH:MM\""});
    }
    return said;
}

}  // namespace spile::desk
