#include "fine_aggregate.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/blended_aggregate.hpp>
#include <boardmark/core/mix/fineness_modulus.hpp>

#include "../basis/phrases.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Unresolved no_room(const std::vector<Ingredient>& others, double taken_m3, const char* for_what) {
    const Ingredient& largest = *std::ranges::max_element(
        others, {}, [](const Ingredient& ingredient) { return *ingredient.volume_m3; });
    return {
        {"the volumes leave no room for {what}: the others fill {sum} of the volume, the largest "
         "part is {name} with {part}",
         {word("what", for_what), percent_of("sum", 100 * taken_m3), word("name", largest.name),
          percent_of("part", 100 * *largest.volume_m3)}},
        {{"look at the largest part first: its amount, relative density and dry-rodded density",
          {}},
         {"lower the water (a water reducer, a lower slump, larger stone), and with it the "
          "cementitious material",
          {}}}};
}

Outcome<double> room_m3(const std::vector<Ingredient>& others, const char* for_what) {
    double taken_m3 = 0;
    for (const Ingredient& ingredient : others) {
        taken_m3 += *ingredient.volume_m3;
    }
    if (taken_m3 < 1) {
        return 1 - taken_m3;
    }
    return no_room(others, taken_m3, for_what);
}

} // namespace

std::optional<double> blend_fineness_modulus(const std::vector<Share>& fine, const Tables& tables,
                                             Worksheet& worksheet) {
    double modulus = 0;
    bool usual = false;
    bool from_sieves = false;
    for (const Share& share : fine) {
        const AggregateFigures& figures = share.material->aggregate;
        std::optional<double> own = figures.fineness_modulus;
        if (!own) {
            own = fineness_modulus(figures.sieves, tables.method.fineness_sieves_mm);
            from_sieves = from_sieves || own;
        }
        if (!own && figures.typical) {
            own = tables.practice.aggregate.fineness_modulus.value;
            usual = true;
        }
        if (!own) {
            return std::nullopt;
        }
        modulus += share.percent / 100 * *own;
    }
    worksheet.record([&] {
        return Step{.quantity = "fineness_modulus",
                    .value = modulus,
                    .measure = Measure::fineness_modulus,
                    .provenance =
                        from_sieves || fine.size() > 1 ? Provenance::computed : Provenance::given,
                    .reason = {usual             ? "usual figure; the sand states none"
                               : fine.size() > 1 ? "of the blend, by mass"
                               : from_sieves     ? "from the sieve analysis"
                                                 : "from the aggregate test report",
                               {}},
                    .source = from_sieves ? tables.method.fineness_source : Source{},
                    .marks = usual ? Marks{Mark::typical} : Marks{}};
    });
    return modulus;
}

Outcome<double> room_for_aggregate_m3(const std::vector<Ingredient>& others) {
    return room_m3(others, "the aggregate");
}

Outcome<double> room_for_fine_aggregate_m3(const std::vector<Ingredient>& others) {
    return room_m3(others, "the fine aggregate");
}

void record_fine_volume(double volume_m3, const MethodTables& method, Worksheet& worksheet) {
    worksheet.record([&] {
        return Step{.quantity = "fine_aggregate_volume",
                    .value = volume_m3,
                    .measure = Measure::absolute_volume,
                    .provenance = Provenance::computed,
                    .reason = {"what is left of the volume beside {others} of all else: the fine "
                               "aggregate fills it",
                               {percent_of("others", 100 * (1 - volume_m3))}},
                    .source = method.absolute_volume};
    });
}

void record_blend(const AggregateBlend& blend, Worksheet& worksheet) {
    worksheet.record([&] {
        Step step{
            .quantity = "fine_share",
            .value = blend.fine_volume_percent(),
            .measure = Measure::percent,
            .provenance = Provenance::computed,
            .reason = {"of the absolute volume of all aggregate; the blend nearest to {target} "
                       "by least squares",
                       {word("target", target_words(blend))}}};
        for (std::size_t i = 0; i < blend.shares.size(); ++i) {
            const BlendedShare& share = blend.shares[i];
            const std::string name = "name" + std::to_string(i + 1);
            const std::string part = "part" + std::to_string(i + 1);
            step.reason.text += i == 0 ? ": {" : ", {";
            step.reason.text.append(name).append("} {").append(part).append("}");
            step.reason.arguments.push_back(word(name, share.material->name));
            step.reason.arguments.push_back(percent_of(part, share.volume_percent));
        }
        return step;
    });
}

void record_fine_share(double percent, Worksheet& worksheet) {
    worksheet.record([&] {
        return Step{
            .quantity = "fine_share",
            .value = percent,
            .measure = Measure::percent,
            .provenance = Provenance::given,
            .reason = {"given under 'selections', of the absolute volume of all aggregate", {}},
            .marks = {Mark::given}};
    });
}

} // namespace boardmark::core
