#include <boardmark/core/trial/complete_trial.hpp>

#include "../mix/door/faults.hpp"

#include <algorithm>
#include <set>

namespace boardmark::core {
namespace {

constexpr Bounds above_zero{.low = 0, .high = out_of_all_reach, .low_itself = false};
constexpr Bounds measured_slump_mm{.low = 0, .high = 305};
constexpr Bounds measured_air_percent{.low = 0, .high = 20};

void find_reading_faults(Field field, const Reading& reading, const Bounds& bounds,
                         const FaultList& list) {
    list.hold(field, reading.value, bounds);
    list.hold(field, reading.step, nothing_or_more);
}

void find_charge_faults(Field field, const Charged& charged, const FaultList& list) {
    if (charged.kg) {
        find_reading_faults(field, *charged.kg, nothing_or_more, list);
    }
    if (charged.m3) {
        find_reading_faults(field, *charged.m3, nothing_or_more, list);
    }
    if (!charged.kg && !charged.m3) {
        list.missing(field, "yield follows from what was weighed");
    } else if (charged.kg && charged.m3) {
        list.impossible(field, "is stated by mass and by volume");
    }
}

void find_density_faults(const DensityTest& test, const FaultList& list) {
    if (const auto* density = std::get_if<Reading>(&test)) {
        find_reading_faults(Field::measured_density, *density, above_zero, list);
        return;
    }
    const auto& measure = std::get<FilledMeasure>(test);
    find_reading_faults(Field::measured_density, measure.full_kg, above_zero, list);
    find_reading_faults(Field::measured_density, measure.empty_kg, nothing_or_more, list);
    find_reading_faults(Field::measured_density, measure.volume_m3, above_zero, list);
    if (measure.full_kg.value <= measure.empty_kg.value) {
        list.impossible(Field::measured_density,
                        "has a full measure no heavier than the empty one");
    }
}

void find_test_faults(const FreshTests& tests, const FaultList& list) {
    find_density_faults(tests.density, list);
    if (tests.slump.empty()) {
        list.missing(Field::measured_slump, "the next trial is corrected by it");
    }
    for (std::size_t i = 0; i < tests.slump.size(); ++i) {
        list.hold(Field::measured_slump, tests.slump[i].minutes, {.low = 0, .high = 1440});
        list.hold(Field::measured_slump, tests.slump[i].mm, measured_slump_mm);
        if (i > 0 && !(tests.slump[i].minutes > tests.slump[i - 1].minutes)) {
            list.impossible(Field::measured_slump, "has times that do not increase");
        }
    }
    list.hold(Field::measured_slump_before_reducer, tests.slump_before_reducer_mm,
              measured_slump_mm);
    list.hold(Field::measured_air, tests.air_percent, measured_air_percent);
    list.hold(Field::measured_temperature, tests.temperature_c, {.low = -30, .high = 120});
}

void find_batched_faults(const BatchedMaterial& batched, const FaultList& list) {
    const Material& material = batched.material;
    if (!find_material_faults(material, list)) {
        return;
    }
    find_charge_faults(Field::amount, batched.amount, list);
    const Role role = role_of(material.kind);
    if (batched.amount.m3 && role != Role::admixture) {
        list.impossible(Field::amount, "is a volume, which only admixtures are measured by");
    }
    if (role != Role::coarse && role != Role::fine) {
        return;
    }
    if (!material.aggregate.moisture_percent) {
        list.missing(Field::moisture, "its free water is mixing water");
    }
    if (!material.aggregate.absorption_percent) {
        list.missing(Field::absorption, "its free water is what it holds above that");
    }
}

/// Every material of the mix once, and no other.
void find_stranger_faults(const Trial& trial, const FaultList& list) {
    std::multiset<std::string> asked;
    for (const Material* material : materials_of(trial.mix)) {
        asked.insert(material->name);
    }
    for (const BatchedMaterial& batched : trial.batched) {
        const auto found = asked.find(batched.material.name);
        if (found == asked.end()) {
            list.impossible(Field::batched, "holds '" + batched.material.name +
                                                "' twice, or it is no material of the mix");
        } else {
            asked.erase(found);
        }
    }
    for (const std::string& name : asked) {
        list.missing(Field::batched, "every material of the mix is weighed, and '" + name +
                                         "' is not; state 0 where it was left out on purpose");
    }
}

double weighed_binder_kg(const Trial& trial) {
    double sum_kg = 0;
    for (const BatchedMaterial& batched : trial.batched) {
        const Kind kind = batched.material.kind;
        if (is_kind(kind) && role_of(kind) == Role::binder && batched.amount.kg) {
            sum_kg += batched.amount.kg->value;
        }
    }
    return sum_kg;
}

} // namespace

Faults faults_of(const Trial& trial) {
    Faults faults;
    const FaultList list{faults};
    find_charge_faults(Field::charged_water, trial.water, list);
    for (std::size_t i = 0; i < trial.batched.size(); ++i) {
        const std::string& name = trial.batched[i].material.name;
        find_batched_faults(trial.batched[i],
                            {faults, "batched[" + std::to_string(i) + "] " + name, name});
    }
    find_stranger_faults(trial, list);
    if (!(weighed_binder_kg(trial) > 0)) {
        list.missing(Field::batched, "none of it is cementitious material");
    }
    find_test_faults(trial.tests, list);
    list.hold(Field::target_slump, trial.target_slump_mm, measured_slump_mm);
    list.hold(Field::target_air, trial.target_air_percent, measured_air_percent);
    list.hold(Field::intended_volume, trial.intended_volume_m3, above_zero);
    return faults;
}

std::variant<CompleteTrial, Faults> complete(Trial trial) {
    Faults faults = faults_of(trial);
    if (!faults.empty()) {
        return faults;
    }
    return CompleteTrial{std::move(trial)};
}

} // namespace boardmark::core
