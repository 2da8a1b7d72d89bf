#include "text_sections.hpp"

#include <boardmark/core/checks/check_remedy.hpp>
#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/core/checks/told_together.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "grid.hpp"
#include "names.hpp"
#include "quantity_format.hpp"
#include "wrap.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

namespace boardmark::report {
namespace {

std::string marks_text(const core::Marks& marks) {
    std::vector<std::string> names;
    for (const core::Mark mark : marks) {
        names.push_back(name_of(mark));
    }
    return fmt::format("{}", fmt::join(names, ", "));
}

std::string confidence_text(core::Confidence confidence) {
    switch (confidence) {
    case core::Confidence::read:
        return "";
    case core::Confidence::from_memory:
        return " (from memory, not read again)";
    case core::Confidence::common_practice:
        return "";
    }
    return "";
}

std::string air_asked(const core::Requirements& requirements, core::UnitSystem system) {
    switch (requirements.air.basis) {
    case core::AirBasis::exposure:
        return requirements.exposure.empty() ? "by exposure class, none is stated"
                                             : "by exposure class";
    case core::AirBasis::none:
        return "none entrained";
    case core::AirBasis::stated:
        return shown({requirements.air.percent, core::Measure::percent}, system);
    }
    return "";
}

} // namespace

Flow section(const std::string& name) {
    return Block{Heading{name}};
}

Flow folded_section(const std::string& name) {
    return Block{Heading{name, true}};
}

Flow wide_section(const std::string& name) {
    return Block{Heading{.text = name, .whole_width = true}};
}

Flow screen_section(const std::string& name) {
    return Block{Heading{.text = name, .screen_only = true}};
}

Flow verdict_line(const core::VerdictSummary& summary, core::UnitSystem system,
                  const std::string& refusal, const std::string& scope) {
    return Block{Headline{words(core::counts_of(summary, refusal), system), core::named_in(summary),
                          summary.state(), scope}};
}

Flow strength_line(const std::vector<core::Check>& checks, core::UnitSystem system) {
    const auto average = std::ranges::find_if(checks, [](const core::Check& check) {
        return check.is(core::check_ids::strength_average);
    });
    return average == checks.end()
               ? Flow{}
               : paragraph("Strength: " + words(average->message, system) + ".", {});
}

Flow verdict_line(const std::vector<core::Check>& checks, core::UnitSystem system,
                  const std::string& refusal) {
    return verdict_line(core::verdicts_of(checks), system, refusal) + strength_line(checks, system);
}

namespace {

std::string told_text(const core::Check& check, core::UnitSystem system) {
    std::string told = words(check.message, system);
    if (!check.source.citation.empty() && check.verdict != core::Verdict::not_checked) {
        told += " [" + check.source.citation + "]";
    }
    const std::string remedy{core::remedy_of(check.id)};
    if (check.verdict == core::Verdict::fails && !remedy.empty()) {
        told +=
            ". Remedy: " + (system == core::UnitSystem::us ? in_us_trade_words(remedy) : remedy);
    }
    return told;
}

} // namespace

CheckRow row_of(core::Check check, core::UnitSystem system) {
    CheckRow row{.verdict = check.verdict,
                 .id = text::printable(check.id),
                 .title = text::printable(core::title_of(check.id)),
                 .told = {}};
    row.told = [check = std::move(check), system] { return told_text(check, system); };
    return row;
}

Flow checks_of(std::vector<CheckRow> rows, const std::string& scope) {
    CheckList unsettled{{}, scope};
    CheckList held{{}, scope, true};
    for (const core::Verdict verdict : {core::Verdict::fails, core::Verdict::watch,
                                        core::Verdict::not_checked, core::Verdict::holds}) {
        auto& list = verdict == core::Verdict::holds ? held : unsettled;
        for (CheckRow& row : rows) {
            if (row.verdict == verdict) {
                list.rows.push_back(std::move(row));
            }
        }
    }
    Flow flow;
    for (CheckList* list : {&unsettled, &held}) {
        if (!list->rows.empty()) {
            flow += Block{std::move(*list)};
        }
    }
    return flow;
}

Flow text_of_checks(const std::vector<core::Check>& checks, core::UnitSystem system,
                    const std::string& scope) {
    std::vector<CheckRow> rows;
    for (core::ToldCheck& once : core::told_together(checks)) {
        rows.push_back(row_of(std::move(once.check), system));
        rows.back().checks = once.parts;
    }
    return checks_of(std::move(rows), scope);
}

Flow text_of_limits(const std::vector<core::Check>& checks) {
    Flow result;
    for (const core::Check& check : checks) {
        if (!check.source.citation.empty()) {
            result += paragraph(fmt::format("{}: {}{}", check.id, check.source.citation,
                                            confidence_text(check.source.confidence)),
                                {.first = "  ", .other = "      "});
        }
    }
    return result;
}

Flow text_of_cautions(const std::vector<core::Phrase>& cautions, const TextStyle& style) {
    Flow result;
    for (const core::Phrase& caution : cautions) {
        result += paragraph(words(caution, style.system), list_item);
    }
    return result;
}

Flow text_of_order(const std::vector<core::Phrase>& order, const TextStyle& style) {
    Flow result;
    for (std::size_t i = 0; i < order.size(); ++i) {
        result += paragraph(words(order[i], style.system),
                            {.first = fmt::format("  {}. ", i + 1), .other = "     "});
    }
    return result;
}

std::string air_text(const core::Requirements& requirements, core::UnitSystem system) {
    const std::string asked = air_asked(requirements, system);
    return requirements.air_loss_percent > 0
               ? asked + " at placing; " +
                     shown({requirements.air_loss_percent, core::Measure::percent}, system) +
                     " is lost between mixer and placing"
               : asked;
}

std::string slump_text(const core::Requirements& requirements, core::UnitSystem system) {
    const auto in_units = [&](double mm) { return shown({mm, core::Measure::slump}, system); };
    std::string text = in_units(requirements.slump_mm);
    if (requirements.slump_before_reducer_mm) {
        text += ", " + in_units(*requirements.slump_before_reducer_mm) +
                " before the high-range reducer";
    }
    if (requirements.slump_window) {
        text += ", permitted at placing " + in_units(requirements.slump_window->low_mm) + " to " +
                in_units(requirements.slump_window->high_mm);
    }
    if (requirements.time_to_place_min) {
        text +=
            fmt::format(", placed within {:.0f} min of mixing", *requirements.time_to_place_min);
    }
    return text;
}

std::string quantity_name(const core::Step& step, core::UnitSystem system) {
    std::string name = in_words(step.quantity);
    const auto replace_word = [&](std::string_view from, std::string_view to) {
        if (const std::size_t at = name.find(from); at != std::string::npos) {
            name.replace(at, from.size(), to);
        }
    };
    replace_word("w cm", "w/cm");
    replace_word("binder", "cementitious material");
    return system == core::UnitSystem::us ? in_us_trade_words(name) : name;
}

std::string shown_value(const core::Step& step, core::UnitSystem system) {
    return step.value ? shown({*step.value, step.measure, step.keep}, system) : "-";
}

Flow text_of_steps(const std::vector<core::Step>& steps, core::UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::left}};
    for (const core::Step& step : steps) {
        std::string why = words(step.reason, system);
        if (!step.source.citation.empty()) {
            why += " [" + step.source.citation + "]";
        }
        if (!step.marks.empty()) {
            why += " (" + marks_text(step.marks) + ")";
        }
        grid.add({quantity_name(step, system), shown_value(step, system), why});
    }
    return grid;
}

Flow text_of_reasons(const std::vector<core::Step>& steps, const TextStyle& style) {
    Flow result;
    for (const core::Step& step : steps) {
        result += paragraph(fmt::format("{} = {}", quantity_name(step, style.system),
                                        shown_value(step, style.system)),
                            {"  ", "  "});
        const Indent indent{.first = "      ", .other = "              "};
        result += paragraph("reason: " + words(step.reason, style.system), indent);
        result += paragraph(
            fmt::format("source: {} ({}){}",
                        step.source.citation.empty() ? "none needed" : step.source.citation,
                        name_of(step.provenance), confidence_text(step.source.confidence)),
            indent);
        std::vector<std::string> inputs;
        for (const core::Argument& argument : step.reason.arguments) {
            const auto* quantity = std::get_if<core::Quantity>(&argument.value);
            if (quantity) {
                inputs.push_back(in_words(argument.name) + " " + shown(*quantity, style.system));
            }
        }
        if (!inputs.empty()) {
            result += paragraph(fmt::format("inputs: {}", fmt::join(inputs, "; ")), indent);
        }
        if (!step.marks.empty()) {
            result += paragraph("marked: " + marks_text(step.marks), indent);
        }
    }
    return result;
}

} // namespace boardmark::report
