// demo: the invented cellar.
#include "demo/cellar/world.hpp"
#include "platform/desk/commands.hpp"

#include <nlohmann/json.hpp>

namespace spile::desk {

int makeDemo(Session& session, const DemoOptions& options)
{
    const Path desk = session.cellarFolder();
    const bool keepPhones = !options.phones.empty();
    const Path phones = keepPhones ? Path(options.phones) : Path(desk.string() + ".phones");
    auto made = demo::makeWorld(session.files(), desk, phones, options.seed, session.job("demo"));
    if (!made) {
        return session.refuse(made.error());
    }
    const auto root = (*made)->stateRoot();
    if (!root) {
        return session.refuse(root.error());
    }
    const std::size_t barrels = (*made)->barrelCount();
    made->reset();  // closes the cellars
    if (!keepPhones) {
        std::error_code ignored;  // what is left of them does no harm
        std::filesystem::remove_all(phones, ignored);
    }
    session.answer({{"folder", desk.string()}, {"barrels", barrels}, {"state_root", root->hex()}},
                   "Made the invented cellar with " + std::to_string(barrels) + " barrels in " +
                       desk.string() + ".\nState root " + root->hex() +
                       ", the same for the same seed.\n");
    return Done;
}

}  // namespace spile::desk
