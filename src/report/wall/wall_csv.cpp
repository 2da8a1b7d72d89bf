#include <boardmark/report/wall/wall_report.hpp>

#include "wall_tables.hpp"

namespace boardmark::report {

std::string csv(const WallResult& result, core::UnitSystem system) {
    const core::WallPlan& plan = result.plan;
    LongTable table{system};
    table.section("wall file");
    table.add_words("title", "", result.wall.title);
    table.add_words("concrete of", "", result.mix_file);
    add_shapes(table, result.wall);
    add_quantities(table, plan.quantities);
    if (result.wall.boards) {
        add_boards(table, result);
    }
    add_forces(table, plan);
    add_placing(table, plan);
    add_joints_and_steel(table, plan);
    if (plan.added_cost) {
        add_added_cost(table, *plan.added_cost);
    }
    table.section("checks of the walls");
    table.add(plan.checks);
    table.section("checks of the mix");
    table.add(plan.mix_checks);
    table.section("cautions");
    table.subject("");
    table.add("caution", plan.cautions);
    return table.text();
}

} // namespace boardmark::report
