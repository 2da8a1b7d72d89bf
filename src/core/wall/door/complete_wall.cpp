#include <boardmark/core/wall/complete_wall.hpp>

#include "wall_faults.hpp"

#include <set>
#include <string>

namespace boardmark::core {
namespace {

/// Walks the parts of one kind; each has its place and its name in every fault of it.
template <class Part>
void find_part_faults(const std::vector<Part>& parts, const std::string& member,
                      void (*find)(const Part&, const FaultList&), std::set<std::string>& names,
                      Faults& faults) {
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const FaultList list{faults, member + "[" + std::to_string(i) + "] " + parts[i].name, ""};
        find(parts[i], list);
        if (!names.insert(parts[i].name).second) {
            list.impossible(Field::part_name, "stands twice");
        }
    }
}

} // namespace

Faults faults_of(const Wall& wall) {
    Faults faults;
    const FaultList list{faults};
    if (wall.runs.empty() && wall.planters.empty() && wall.benches.empty()) {
        list.missing(Field::runs, "planters or benches would do as well");
    }
    std::set<std::string> names;
    find_part_faults(wall.runs, "runs", find_run_faults, names, faults);
    find_part_faults(wall.planters, "planters", find_planter_faults, names, faults);
    find_part_faults(wall.benches, "benches", find_bench_faults, names, faults);
    find_form_faults(wall, list);
    find_work_faults(wall, list);
    return faults;
}

std::variant<CompleteWall, Faults> complete(Wall wall) {
    Faults faults = faults_of(wall);
    if (!faults.empty()) {
        return faults;
    }
    return CompleteWall{std::move(wall)};
}

} // namespace boardmark::core
