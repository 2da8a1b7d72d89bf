#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/charges.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "batch_yield.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double most_charges = 1000;

/// The whole number at or above a ratio; what conversion added to a whole one is forgiven.
double whole_above(double ratio) {
    const double nearest = std::round(ratio);
    return same(ratio, nearest) ? nearest : std::ceil(ratio);
}

double whole_below(double ratio) {
    const double nearest = std::round(ratio);
    return same(ratio, nearest) ? nearest : std::floor(ratio);
}

Argument volume_of(std::string name, double m3) {
    return quantity(std::move(name), {m3, Measure::volume});
}

std::string name_of(Vessel vessel) {
    return vessel == Vessel::mixer ? "mixer" : "truck";
}

Unresolved nothing_to_divide() {
    return {{"the volume and what the vessel takes are no numbers above 0", {}},
            {{"state both above 0", {}}}};
}

bool can_be_divided(double volume_m3, const std::optional<VesselSize>& size) {
    return is_some(volume_m3) && (!size || is_some(size->capacity_m3));
}

Outcome<int> counted(double count, double volume_m3, const VesselSize& size) {
    if (count > most_charges) {
        return Unresolved{{"{volume} in a {vessel} of {capacity} would be more than a thousand "
                           "charges",
                           {volume_of("volume", volume_m3), word("vessel", name_of(size.vessel)),
                            volume_of("capacity", size.capacity_m3)}},
                          {{"mix in a larger vessel", {}}, {"order less at a time", {}}}};
    }
    return std::max(1, static_cast<int>(count)); // of so little that the ratio counts as 0
}

Unresolved sack_too_large(const Sack& sack, double of_one_sack_m3, const VesselSize& size) {
    return {{"one sack of {name} ({sack}) makes {volume} of this concrete; the {vessel} "
             "takes {capacity}",
             {word("name", sack.material), quantity("sack", {sack.kg, Measure::mass}),
              volume_of("volume", of_one_sack_m3), word("vessel", name_of(size.vessel)),
              volume_of("capacity", size.capacity_m3)}},
            {{"weigh part of a sack: leave '--sacks' out", {}},
             {"mix in a larger mixer", {}},
             {"buy smaller sacks", {}}}};
}

std::vector<Phrase> cautions_of_mixer(const Charging& charging) {
    std::vector<Phrase> cautions{
        {"{capacity} is taken as the mixer's rated capacity, not as the volume of its drum: no "
         "charge is larger. An overfilled mixer does not mix properly.",
         {volume_of("capacity", charging.size->capacity_m3)}}};
    if (charging.count > 1) {
        cautions.push_back(
            {"All {count} charges are the same size, with no small last one: unequal charges show "
             "as unequal colour. Coat the drum with mortar of this mix before the first charge, or "
             "that charge loses mortar to the drum.",
             {quantity("count", {double(charging.count), Measure::count})}});
    }
    return cautions;
}

std::vector<Phrase> cautions_of_trucks(const Charging& charging) {
    std::vector<Phrase> cautions{
        {"{capacity} is taken as the load that the supplier carries, not as the volume of the "
         "drum. Where the supplier's limit is lower, that limit counts.",
         {volume_of("capacity", charging.size->capacity_m3)}}};
    if (charging.count > 1) {
        cautions.push_back({"All {count} loads are the same size, with no small last one: a short "
                            "load loses more of its mortar to the drum, and the colour differs.",
                            {quantity("count", {double(charging.count), Measure::count})}});
    }
    if (below(charging.each_m3, charging.size->capacity_m3)) {
        cautions.push_back(
            {"Each load is {percent} of what the truck carries: ask the supplier for the least "
             "load that "
             "still mixes and delivers evenly.",
             {percent_of("percent", 100 * charging.each_m3 / charging.size->capacity_m3)}});
    }
    return cautions;
}

} // namespace

Outcome<Charging> charges_of(double volume_m3, const std::optional<VesselSize>& size) {
    if (!can_be_divided(volume_m3, size)) {
        return nothing_to_divide();
    }
    if (!size) {
        return Charging{.count = 1, .each_m3 = volume_m3};
    }
    const auto count = counted(whole_above(volume_m3 / size->capacity_m3), volume_m3, *size);
    if (!count) {
        return count.why();
    }
    return Charging{.count = *count, .each_m3 = volume_m3 / *count, .size = size};
}

Outcome<Charging> charges_of_whole_sacks(double volume_m3, const std::optional<VesselSize>& size,
                                         const Proportions& proportions, const Sack& sack) {
    if (!can_be_divided(volume_m3, size)) {
        return nothing_to_divide();
    }
    const double of_one_sack_m3 = sack.kg / ingredient_named(proportions, sack.material).kg_m3;
    const double sacks = whole_above(volume_m3 / of_one_sack_m3);
    if (!size) {
        return Charging{.count = 1, .each_m3 = sacks * of_one_sack_m3};
    }
    const double most_sacks = whole_below(size->capacity_m3 / of_one_sack_m3);
    if (most_sacks < 1) {
        return sack_too_large(sack, of_one_sack_m3, *size);
    }
    const auto count = counted(whole_above(sacks / most_sacks), volume_m3, *size);
    if (!count) {
        return count.why();
    }
    const double each = whole_above(sacks / *count);
    return Charging{.count = *count, .each_m3 = each * of_one_sack_m3, .size = size};
}

Batch sum_of(const Batch& each, int count) {
    const auto times = [count](std::optional<double>& value) {
        if (value) {
            *value *= count;
        }
    };
    Batch sum = each;
    sum.volume_m3 *= count;
    sum.free_water_kg *= count;
    sum.binder_kg *= count;
    sum.liquid_kg *= count;
    sum.mass_kg *= count;
    sum.held_back_kg *= count;
    times(sum.yield_m3);
    for (BatchItem& item : sum.items) {
        item.kg *= count;
        times(item.litres);
        times(item.free_water_kg);
        times(item.sacks);
    }
    return sum;
}

std::vector<Phrase> cautions_of(const Charging& charging) {
    if (!charging.size) {
        return {};
    }
    return charging.size->vessel == Vessel::mixer ? cautions_of_mixer(charging)
                                                  : cautions_of_trucks(charging);
}

} // namespace boardmark::core
