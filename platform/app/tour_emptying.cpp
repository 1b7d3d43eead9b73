// The sheets from the barrel to the bottle: a part of tour.cpp.
#include "core/cellar/acts/lots.hpp"
#include "platform/app/tour.hpp"

namespace spile::app {

using namespace viewmodels;

// The barrel that was worked on before is full. A part of it is brought into a lot, which the
// other sheets are for.
std::vector<Tour::Scene> Tour::emptying()
{
    auto& work = *app_.work();
    const auto begin = [this, &work] {
        settle();
        if (!work.stepName().isEmpty()) {
            work.giveUp();
            settle();
        }
    };
    const auto beginOnLot = [this, begin](const char* sheet) {
        begin();
        app_.workers().act(
            &app_,
            [barrel = app_.barrel()->row().barrel](cellar::Cellar& cellar) -> Result<SubjectId> {
                SPILE_ASSIGN(lot, cellar::lotNamed(cellar, "Harbour Light"));
                SPILE_ASSIGN(row, cellar::lotById(cellar.database(), lot));
                if (row && row->in == Volume()) {
                    SPILE_TRY(cellar::recordTransfer(cellar, {lot, barrel, litres(120), 0.112}));
                }
                return lot;
            },
            [this, sheet](const Result<SubjectId>& lot) {
                if (lot) {
                    app_.beginLotSheet(QLatin1String(sheet), textOf(*lot));
                }
            });
        settle();
    };
    // To that step, all that is asked for on the way left out.
    const auto goTo = [this, &work](const char* step) {
        for (int guard = 0; guard < 30 && work.stepName() != QLatin1String(step); ++guard) {
            work.skip(0);
            settle();
        }
    };
    const auto see = [this, &work] {
        work.beginStep();
        settle();
    };
    const auto choose = [this, &work](const char* ask, int index) {
        work.chooseWord(QLatin1String(ask), index);
        settle();
    };
    const auto enter = [this, &work](const char* ask, int steps = 0) {
        work.stepAsk(QLatin1String(ask), 0);
        settle();
        if (steps != 0) {
            work.stepAsk(QLatin1String(ask), steps);
            settle();
        }
    };
    return {
        {QStringLiteral("empty-ease"),
         [this, begin] {
             showBarrel();
             begin();
             app_.beginWork("empty");
         }},
        {QStringLiteral("empty-kit"), [goTo] { goTo("kit"); }},
        {QStringLiteral("empty-lot"), [goTo] { goTo("where_to"); }},
        {QStringLiteral("empty-way"),
         [=] {
             choose("how_much", 0);
             goTo("way");
             choose("way_out", 2);
             enter("lift_mm");
         }},
        {QStringLiteral("empty-pressure-caution"), [goTo] { goTo("pressure"); }},
        {QStringLiteral("empty-pressure"),
         [=] {
             see();
             constexpr int tooMuch = 12;
             enter("push_pa", tooMuch);
         }},
        {QStringLiteral("empty-push"), [goTo] { goTo("push"); }},
        {QStringLiteral("empty-out"),
         [=] {
             goTo("how_much_out");
             see();
             choose("out_way", 0);
             enter("out_ml");
         }},
        {QStringLiteral("empty-heel"),
         [=] {
             goTo("heel");
             see();
             enter("heel_ml");
         }},
        {QStringLiteral("empty-next"),
         [=] {
             goTo("next");
             choose("next_use", 1);
             choose("programme", 0);
         }},
        {QStringLiteral("finish-what"), [=] { beginOnLot("finish"); }},
        {QStringLiteral("finish-trial"),
         [=] {
             choose("addition", 2);
             goTo("trial");
             see();
             enter("trial_ml");
             enter("trial_dose_mg");
         }},
        {QStringLiteral("finish-contact"),
         [=] {
             goTo("contact");
             enter("first_taste_days");
             enter("contact_days");
         }},
        {QStringLiteral("treat"),
         [=] {
             beginOnLot("treat");
             choose("treatment", 0);
             goTo("filter");
         }},
        {QStringLiteral("carbonate-keg"),
         [=] {
             beginOnLot("carbonate");
             choose("carbonating", 0);
             goTo("keg");
             see();
             enter("volumes_e2");
             enter("carb_temp_mc");
             choose("gas_way", 0);
         }},
        {QStringLiteral("carbonate-prime"),
         [=] {
             beginOnLot("carbonate");
             choose("carbonating", 1);
             goTo("there");
             see();
             enter("warmest_mc");
             goTo("sugar");
             see();
             constexpr int lively = 8;
             enter("volumes_e2", lively);
             choose("sugar", 1);
         }},
        {QStringLiteral("package-hold"), [=] { beginOnLot("package"); }},
        {QStringLiteral("package-plan"),
         [=] {
             goTo("plan");
             choose("package_a", 0);
             enter("loss_e2");
         }},
        {QStringLiteral("package-fill"), [=] { goTo("fill"); }},
        {QStringLiteral("package-label"),
         [=] {
             goTo("label");
             choose("law", 0);
             enter("abv_e2");
             enter("label_abv_e2");
         }},
        {QStringLiteral("package-code"),
         [=, this] {
             goTo("code");
             choose("lot_code", 0);
             enter("best_before_months");
             app_.navigator()->go(Navigator::Today);
             app_.openWork()->refresh();
             settle();
             app_.openWork()->goOn(app_.openWork()->count() - 1);
         }},
    };
}

}  // namespace spile::app
