#include "aggregate_flow.hpp"

#include <boardmark/core/mix/grading.hpp>

#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::AggregateBlend;
using core::AggregateTogether;
using core::Measure;
using core::SieveOfAll;
using core::UnitSystem;

const AggregateBlend* blend_of(const MixResult& result) {
    return result.proportions.blend.get();
}

const core::SieveBand* target_at(const AggregateBlend* blend, double opening_mm) {
    if (!blend) {
        return nullptr;
    }
    const auto found = std::ranges::find_if(blend->target, [&](const core::SieveBand& sieve) {
        return core::is_sieve(sieve.opening_mm, opening_mm);
    });
    return found == blend->target.end() ? nullptr : &*found;
}

std::string points(double percent) {
    return fixed(percent, 1);
}

std::string between(double low, double high) {
    return low == high ? points(low) : points(low) + " to " + points(high);
}

std::string sieve_name(const core::RetainedLimits& sieve, UnitSystem system) {
    return system == UnitSystem::us ? sieve.name : fmt::format("{:g} mm", sieve.opening_mm);
}

std::string size_words(double opening_mm, UnitSystem system) {
    return shown({opening_mm, Measure::aggregate_size}, system);
}

std::string parts_words(const AggregateTogether& together) {
    std::string words;
    for (const core::AggregatePart& part : together.parts) {
        words += (words.empty() ? "" : ", ") + column_name(part.name) + " " +
                 points(part.volume_percent) + " %";
    }
    return words;
}

std::string target_line(const AggregateBlend& blend, UnitSystem system) {
    std::string words = core::target_words(blend);
    if (blend.maximum_mm) {
        words += " up to " + size_words(*blend.maximum_mm, system);
    }
    if (blend.most_off_percent == 0) {
        return words + ", met on every sieve";
    }
    return words + ", by least squares; off it by " + points(blend.mean_off_percent) +
           " points on average, by " + fmt::format("{:+.1f}", blend.most_off_percent) + " at " +
           size_words(blend.most_off_mm, system);
}

const char* field_words(core::WorkabilityField field) {
    switch (field) {
    case core::WorkabilityField::gap_graded:
        return "gap-graded";
    case core::WorkabilityField::well_graded:
        return "well graded";
    case core::WorkabilityField::small_stone:
        return "of small stone";
    case core::WorkabilityField::sandy:
        return "sandy";
    case core::WorkabilityField::rocky:
        return "rocky";
    }
    return "";
}

std::string factors_words(const AggregateTogether& together, const core::WorkabilityRules& rules) {
    const auto field = core::field_of(together, rules);
    if (!field) {
        return "workability " + points(together.workability_factor) +
               "; nothing is retained on No. 8";
    }
    return "coarseness " + points(*together.coarseness_factor) + ", workability " +
           points(together.workability_factor) + ": " + field_words(*field) +
           " (advice, fields as remembered, for rounded or cubical stone)";
}

Grid summary(const MixResult& result, UnitSystem system) {
    const AggregateTogether& together = *result.aggregate;
    Grid grid{{Align::left, Align::left}};
    grid.add({"of the volume", parts_words(together)});
    if (const AggregateBlend* blend = blend_of(result)) {
        grid.add({"blended to", target_line(*blend, system)});
        std::string left_out;
        for (const core::BlendedShare& share : blend->shares) {
            if (!(share.volume_percent > 0)) {
                left_out += (left_out.empty() ? "" : ", ") + column_name(share.material->name);
            }
        }
        if (!left_out.empty()) {
            grid.add({"not taken", left_out});
        }
    }
    grid.add({"fineness modulus", fixed(together.fineness_modulus, 2)});
    grid.add({"factors", factors_words(together, (*result.grading)->workability)});
    return grid;
}

Grid sieve_table(const MixResult& result, UnitSystem system) {
    const AggregateBlend* blend = blend_of(result);
    std::vector<Align> columns{Align::left, Align::right};
    std::vector<std::string> head{"sieve", "passes, %"};
    if (blend) {
        columns.push_back(Align::right);
        head.push_back("target, %");
    }
    columns.insert(columns.end(), {Align::right, Align::right});
    head.insert(head.end(), {"held back, %", "advised, %"});
    Grid grid{std::move(columns)};
    grid.head(std::move(head));
    for (const SieveOfAll& sieve : result.aggregate->sieves) {
        const core::RetainedLimits& limits = sieve.limits;
        std::vector<std::string> cells{sieve_name(limits, system), points(sieve.passing_percent)};
        if (blend) {
            const auto* target = target_at(blend, limits.opening_mm);
            cells.push_back(target ? between(target->low_percent, target->high_percent) : "");
        }
        cells.push_back(points(sieve.retained_percent));
        cells.push_back(limits.low_percent && limits.high_percent
                            ? fmt::format("{:g} to {:g}", *limits.low_percent, *limits.high_percent)
                            : "");
        grid.add(std::move(cells));
    }
    return grid;
}

} // namespace

Flow aggregate_flow(const MixResult& result, UnitSystem system) {
    if (!result.aggregate || !result.grading) {
        return {};
    }
    return section("AGGREGATES TOGETHER, by absolute volume") + summary(result, system) + "\n" +
           sieve_table(result, system) +
           paragraph("A sieve that an aggregate does not state is read on a line between the two "
                     "beside it; below its finest one, what passes is taken in proportion to the "
                     "opening. What is advised to stay on each sieve is "
                     "remembered, and advice.",
                     {"  ", "  "});
}

Json json_of_aggregate(const MixResult& result) {
    const AggregateTogether& together = *result.aggregate;
    const AggregateBlend* blend = blend_of(result);
    constexpr const char* targets[] = {"maximum density", "curve", "band"};
    Json object{{"target", blend ? Json(targets[static_cast<std::size_t>(blend->to)]) : Json()},
                {"maximum_size_mm", number_or_null(together.maximum_mm)},
                {"off_target_percent", blend ? Json(blend->mean_off_percent) : Json()},
                {"most_off_target_percent", blend ? Json(blend->most_off_percent) : Json()},
                {"fineness_modulus", together.fineness_modulus},
                {"coarseness_factor", number_or_null(together.coarseness_factor)},
                {"workability_factor", together.workability_factor},
                {"parts", Json::array()},
                {"sieves", Json::array()}};
    for (const core::AggregatePart& part : together.parts) {
        object["parts"].push_back({{"name", part.name}, {"volume_percent", part.volume_percent}});
    }
    for (const SieveOfAll& sieve : together.sieves) {
        const auto* target = target_at(blend, sieve.limits.opening_mm);
        object["sieves"].push_back(
            {{"opening_mm", sieve.limits.opening_mm},
             {"passing_percent", sieve.passing_percent},
             {"retained_percent", sieve.retained_percent},
             {"target_low_percent", target ? Json(target->low_percent) : Json()},
             {"target_high_percent", target ? Json(target->high_percent) : Json()}});
    }
    return object;
}

} // namespace boardmark::report
