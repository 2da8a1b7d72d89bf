#include "code_matrix.hpp"

#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/grid.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/wrap.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

namespace ids = core::check_ids;

struct MatrixRow {
    core::CheckId id;
    const char* name;
};

/// What codes demand of a mix, in the order of the checks.
constexpr MatrixRow demands[] = {
    {ids::w_cm_exposure, "water/cement"},     {ids::strength_exposure, "strength"},
    {ids::air_exposure, "air"},               {ids::scm_fly_ash, "fly ash"},
    {ids::scm_slag_cement, "slag cement"},    {ids::scm_silica_fume, "silica fume"},
    {ids::scm_total, "additions"},            {ids::scm_ash_and_fume, "ash and fume"},
    {ids::binder_exposure, "least cement"},   {ids::cement_most, "most cement"},
    {ids::cement_sulfate, "cement type"},     {ids::chloride_sulfate, "CaCl2"},
    {ids::chloride_exposure, "chloride"},     {ids::aggregate_reactivity, "reactivity"},
    {ids::exposure_stated, "all stated"},     {ids::exposure_site, "by the site"},
};

/// The worst finding of a demand: one of several classes, or of several categories.
const core::Check* worst_of(const core::CodeJudgement& judged, core::CheckId id) {
    constexpr core::Verdict worst_first[] = {core::Verdict::fails, core::Verdict::not_checked,
                                             core::Verdict::watch, core::Verdict::holds};
    for (const core::Verdict verdict : worst_first) {
        for (const core::Check& check : judged.checks) {
            if (check.is(id) && check.verdict == verdict) {
                return &check;
            }
        }
    }
    return nullptr;
}

/// The figure without its unit, which stands behind the limit.
std::string bare(const std::string& shown) {
    return shown.substr(0, shown.find(' '));
}

std::string bounds_text(const core::Check& check, core::UnitSystem system) {
    const auto in_units = [&](double value) { return shown({value, check.measure}, system); };
    const core::Limit& limit = *check.limit;
    return limit.low && limit.high ? bare(in_units(*limit.low)) + " to " + in_units(*limit.high)
           : limit.low             ? "least " + in_units(*limit.low)
           : limit.high            ? "most " + in_units(*limit.high)
                                   : "";
}

std::string cell_of(const core::CodeJudgement& judged, core::CheckId id, core::UnitSystem system) {
    const core::Check* check = worst_of(judged, id);
    if (!check) {
        return "no demand";
    }
    if (check->verdict == core::Verdict::not_checked) {
        return id == ids::strength_exposure ? "not comparable" : "not checked";
    }
    std::string text = name_of(check->verdict);
    if (check->value) {
        text += ": " + bare(shown({*check->value, check->measure}, system));
    }
    return check->limit ? text + ", " + bounds_text(*check, system) : text;
}

std::string classes_text(const core::CodeJudgement& judged) {
    return judged.exposure.empty() ? "none stated"
                                   : fmt::format("{}", fmt::join(judged.exposure, ", "));
}

template <class CellOf>
void add_row(Grid& grid, const std::string& name, const std::vector<core::CodeJudgement>& codes,
             CellOf&& cell) {
    std::vector<std::string> cells{name};
    for (const core::CodeJudgement& judged : codes) {
        cells.push_back(text::printable(cell(judged)));
    }
    grid.add(cells);
}

Grid matrix(const std::vector<core::CodeJudgement>& codes, core::UnitSystem system) {
    Grid grid{std::vector<Align>(codes.size() + 1, Align::left)};
    std::vector<std::string> head{""};
    for (const core::CodeJudgement& judged : codes) {
        head.push_back(text::printable(judged.code));
    }
    grid.head(head);
    add_row(grid, "edition", codes, [](const auto& judged) {
        return judged.edition.empty() ? std::string{"-"} : judged.edition;
    });
    add_row(grid, "classes", codes, [](const auto& judged) { return classes_text(judged); });
    for (const MatrixRow& row : demands) {
        const bool anywhere = std::ranges::any_of(
            codes, [&](const auto& judged) { return worst_of(judged, row.id) != nullptr; });
        if (anywhere) {
            add_row(grid, row.name, codes,
                    [&](const auto& judged) { return cell_of(judged, row.id, system); });
        }
    }
    add_row(grid, "in all", codes, [](const auto& judged) {
        return std::string{name_of(core::verdicts_of(judged.checks).state())};
    });
    return grid;
}

} // namespace

Flow code_matrix(const std::vector<core::CodeJudgement>& codes, core::UnitSystem system) {
    Flow flow = section("CODES SIDE BY SIDE");
    flow += paragraph("Each column counts and measures as its code does: no class, strength or "
                      "chloride of one code is turned into one of another.",
                      {});
    flow += matrix(codes, system);
    for (std::size_t i = 1; i < codes.size(); ++i) {
        const std::string name = text::printable(codes[i].code);
        flow += section("BY " + name) + text_of_checks(codes[i].checks, system, name);
    }
    return flow;
}

Json json_of(const std::vector<core::CodeJudgement>& codes) {
    Json list = Json::array();
    for (const core::CodeJudgement& judged : codes) {
        list.push_back({{"code", judged.code},
                        {"edition", judged.edition},
                        {"exposure", judged.exposure},
                        {"checks", json_of(judged.checks)},
                        {"verdict", json_of(core::verdicts_of(judged.checks))}});
    }
    return list;
}

} // namespace boardmark::report
