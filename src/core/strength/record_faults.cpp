#include <boardmark/core/strength/complete_record.hpp>

#include "../mix/door/faults.hpp"

#include <algorithm>
#include <set>

namespace boardmark::core {
namespace {

// What is possible at all; common practice, no source.
constexpr Bounds possible_mpa{.low = 0, .high = 400, .low_itself = false};
constexpr Bounds possible_age_d{.low = 0, .high = 36500, .low_itself = false};
constexpr Bounds possible_mm{.low = 0, .high = 1000, .low_itself = false};
constexpr Bounds possible_w_cm{.low = 0, .high = 2, .low_itself = false};
constexpr Bounds possible_air{.low = 0, .high = 20};

void find_specimen_kind_faults(const StrengthRecord& record, const FaultList& list) {
    list.hold(Field::specimen, record.specimen.width_mm, possible_mm);
    list.hold(Field::specimen, record.specimen.height_mm, possible_mm);
    switch (record.specimen.shape) {
    case SpecimenShape::cylinder:
        return;
    case SpecimenShape::cube:
        if (record.specimen.height_mm != record.specimen.width_mm) {
            list.impossible(Field::specimen, "is a cube whose height is not its edge");
        }
        if (record.code == AcceptanceCode::aci_318) {
            list.impossible(Field::specimen, "is a cube, and the code judges cylinders; none is "
                                             "converted");
        }
        return;
    }
    list.unknown(Field::specimen, "shape");
}

void find_rule_faults(const StrengthRecord& record, const FaultList& list) {
    if (record.system != UnitSystem::us && record.system != UnitSystem::si) {
        list.unknown(Field::system, "system");
    }
    if (record.code != AcceptanceCode::aci_318 && record.code != AcceptanceCode::en_206) {
        list.unknown(Field::acceptance_code, "code");
    }
    if (record.assessment != Assessment::conformity && record.assessment != Assessment::identity) {
        list.unknown(Field::assessment, "assessment");
    }
    list.hold(Field::specified_strength, record.specified_mpa, possible_mpa);
    list.hold(Field::record_age, record.strength_age_d, possible_age_d);
    list.hold(Field::nominal_max_size, record.nominal_size_mm, possible_mm);
}

/// A name of its own for each part of a list.
template <class Part>
void find_name_faults(Field field, const std::vector<Part>& parts, const FaultList& list) {
    std::set<std::string> names;
    for (const Part& part : parts) {
        if (part.name.empty()) {
            list.missing(Field::name, "results are told by it");
        } else if (!names.insert(part.name).second) {
            list.impossible(field, "holds '" + part.name + "' twice");
        }
    }
}

void find_batch_faults(const CastBatch& batch, const FaultList& list) {
    if (batch.purpose != BatchPurpose::production && batch.purpose != BatchPurpose::trial) {
        list.unknown(Field::cast_batches, "purpose");
    }
    if (batch.purpose == BatchPurpose::production && !batch.cast) {
        list.missing(Field::cast_day, "averages of consecutive tests go by the order of casting");
    }
    list.hold(Field::batch_w_cm, batch.w_cm, possible_w_cm);
    list.hold(Field::batch_air, batch.air_percent, possible_air);
}

void find_batch_of(std::size_t batch, const StrengthRecord& record, Field field,
                   const FaultList& list) {
    if (batch >= record.batches.size()) {
        list.impossible(field, "is of a batch that is not there");
    }
}

/// A core is drilled from what was cast, then wetted, then tested.
void find_day_faults(const DrilledCore& core, const StrengthRecord& record, const FaultList& list) {
    const auto cast =
        core.batch < record.batches.size() ? record.batches[core.batch].cast : std::optional<int>{};
    std::optional<int> before;
    for (const auto& day : {cast, core.drilled, core.last_wetted, core.tested}) {
        if (day && before && *day < *before) {
            list.impossible(Field::core_days, "are not in their order");
            return;
        }
        before = day ? day : before;
    }
}

void find_core_faults(const DrilledCore& core, const StrengthRecord& record,
                      const FaultList& list) {
    find_batch_of(core.batch, record, Field::drilled_cores, list);
    list.hold(Field::core_size, core.diameter_mm, possible_mm);
    list.hold(Field::core_size, core.length_mm, possible_mm);
    list.hold(Field::core_strength, core.strength_mpa, possible_mpa);
    list.hold(Field::core_days, core.bagged_after_h, nothing_or_more);
    find_day_faults(core, record, list);
}

std::string place(const char* what, std::size_t number, const std::string& name) {
    return std::string{what} + "[" + std::to_string(number) + "] " + name;
}

} // namespace

Faults faults_of(const StrengthRecord& record) {
    Faults faults;
    const FaultList list{faults};
    find_rule_faults(record, list);
    find_specimen_kind_faults(record, list);
    find_name_faults(Field::cast_batches, record.batches, list);
    find_name_faults(Field::crushed_specimens, record.specimens, list);
    find_name_faults(Field::drilled_cores, record.cores, list);
    for (std::size_t i = 0; i < record.batches.size(); ++i) {
        find_batch_faults(record.batches[i],
                          {faults, place("batches", i, record.batches[i].name), ""});
    }
    for (std::size_t i = 0; i < record.specimens.size(); ++i) {
        const CrushedSpecimen& specimen = record.specimens[i];
        const FaultList of_specimen{faults, place("specimens", i, specimen.name), ""};
        find_batch_of(specimen.batch, record, Field::crushed_specimens, of_specimen);
        of_specimen.hold(Field::specimen_age, specimen.age_d, possible_age_d);
        of_specimen.hold(Field::specimen_strength, specimen.strength_mpa, possible_mpa);
    }
    for (std::size_t i = 0; i < record.cores.size(); ++i) {
        find_core_faults(record.cores[i], record,
                         {faults, place("cores", i, record.cores[i].name), ""});
    }
    return faults;
}

std::variant<CompleteRecord, Faults> complete(StrengthRecord record) {
    Faults faults = faults_of(record);
    if (!faults.empty()) {
        return faults;
    }
    return CompleteRecord{std::move(record)};
}

} // namespace boardmark::core
