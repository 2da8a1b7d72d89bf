#include "sack_text.hpp"

#include "../writing/grid.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/wrap.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::Measure;

std::string verdict_of(const std::vector<core::Check>& checks) {
    const auto ids = failed_ids(checks);
    if (!ids.empty()) {
        return fmt::format("FAILS {}", fmt::join(ids, ", "));
    }
    const auto count = [&](core::Verdict verdict) {
        return std::ranges::count(checks, verdict, &core::Check::verdict);
    };
    std::string text = "nothing fails";
    if (const auto watch = count(core::Verdict::watch)) {
        text += fmt::format(", {} watch", watch);
    }
    if (const auto open = count(core::Verdict::not_checked)) {
        text += fmt::format(", {} open", open);
    }
    return text == "nothing fails" ? "holds" : text;
}

/// "cement 1 sack, slag 0.33 sacks"
std::string taken(const core::Batch& batch) {
    std::string text;
    for (const core::BatchItem& item : batch.items) {
        if (item.sacks) {
            text +=
                (text.empty() ? "" : ", ") + column_name(item.name) + " " + sacks_text(*item.sacks);
        }
    }
    return text;
}

std::string advice(const SackResult& sacks) {
    const std::string name = column_name(sacks.study.main.material);
    return "The ticket takes the volume that whole sacks of " + name +
           " make, so that w/cm stays what it is: mix it and waste what is left, or weigh part of "
           "a sack. Never take fewer sacks and the same water.";
}

} // namespace

std::string sacks_text(double count) {
    const double whole = std::round(count);
    constexpr double as_good_as_whole = 1e-6;
    return std::abs(count - whole) < as_good_as_whole
               ? fixed(whole, 0) + (whole == 1 ? " sack" : " sacks")
               : fixed(count, 2) + " sacks";
}

Flow text_of_sacks(const BatchResult& result, const TextStyle& style) {
    const core::SackStudy& study = result.sacks->study;
    const auto volume = [&](double m3) { return shown({m3, Measure::volume}, style.system); };
    const auto ratio = [&](double w_cm) { return shown({w_cm, Measure::w_cm}, style.system); };
    const std::string name = column_name(study.main.material);
    const double exact_w_cm = result.proportions.totals.w_cm;

    Grid grid{{Align::left, Align::right, Align::left, Align::left, Align::left}};
    grid.head({"", "concrete", "w/cm", "", ""});
    grid.add({"as ordered", volume(study.rounded.volume_m3), ratio(exact_w_cm),
              name + " " + sacks_text(study.exact_sacks),
              verdict_of(result.sacks->ordered_checks)});
    grid.add({"sacks rounded, the rest as ordered",
              volume(study.rounded.yield_m3.value_or(study.rounded.volume_m3)),
              ratio(study.rounded.w_cm), taken(study.rounded),
              verdict_of(result.sacks->rounded_checks)});
    if (study.volume_below_m3) {
        const double sacks = std::floor(study.exact_sacks);
        grid.add({"whole sacks, less concrete", volume(*study.volume_below_m3), ratio(exact_w_cm),
                  name + " " + sacks_text(sacks), verdict_of(result.sacks->below_checks)});
    }
    grid.add({"this ticket", volume(result.each.volume_m3), ratio(result.each.w_cm),
              taken(result.each), verdict_of(result.checks)});
    return grid + paragraph(advice(*result.sacks), {.first = "  ", .other = "  "});
}

} // namespace boardmark::report
