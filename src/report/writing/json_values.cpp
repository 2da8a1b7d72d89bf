#include "json_values.hpp"

#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "finite.hpp"
#include "measure_units.hpp"
#include "names.hpp"

namespace boardmark::report {
namespace {

// JSON is in SI whatever the reader's units are; so are the sentences in it.

Json json_of_marks(const core::Marks& marks) {
    Json names = Json::array();
    for (const core::Mark mark : marks) {
        names.push_back(name_of(mark));
    }
    return names;
}

Json json_of_limit(const std::optional<core::Limit>& limit) {
    if (!limit) {
        return nullptr;
    }
    if (limit->low && limit->high) {
        return Json::array({*limit->low, *limit->high});
    }
    return number_or_null(limit->low ? limit->low : limit->high);
}

Json json_of_inputs(const core::Phrase& reason) {
    Json inputs = Json::array();
    for (const core::Argument& argument : reason.arguments) {
        if (const auto* quantity = std::get_if<core::Quantity>(&argument.value)) {
            inputs.push_back({{"name", argument.name},
                              {"value", quantity->value},
                              {"unit", si_unit(quantity->measure)}});
        } else {
            inputs.push_back(
                {{"name", argument.name}, {"value", std::get<std::string>(argument.value)}});
        }
    }
    return inputs;
}

Json json_of(const core::BatchItem& item) {
    Json row{{"name", item.name},
             {"role", core::name_of(item.role)},
             {"kg", item.kg},
             {"litres", number_or_null(item.litres)}};
    if (item.by_trial) {
        row["by_trial"] = true;
    }
    if (item.sacks) {
        row["sacks"] = *item.sacks;
    }
    return row;
}

/// A sentence in SI with the figures it speaks of.
Json json_of_item(const core::Phrase& phrase) {
    Json values = Json::object();
    for (const core::Argument& argument : phrase.arguments) {
        if (const auto* quantity = std::get_if<core::Quantity>(&argument.value)) {
            values[argument.name] = {{"value", quantity->value},
                                     {"unit", si_unit(quantity->measure)}};
        }
    }
    return {{"text", words(phrase, json_system)}, {"values", std::move(values)}};
}

} // namespace

Json json_heading(const std::string& command, const std::string& title,
                  const core::VerdictSummary& verdict, const InputFiles& inputs) {
    Json files = Json::array();
    for (const InputFile& input : inputs) {
        files.push_back({{"file", text::printable(input.name)}, {"sha256", input.sha256}});
    }
    return {{"boardmark", 1},
            {"program", {{"name", "boardmark"}, {"version", BOARDMARK_VERSION}}},
            {"inputs", std::move(files)},
            {"command", command},
            {"title", title},
            {"verdict", json_of(verdict)}};
}

Json json_of(const core::VerdictSummary& verdict) {
    return {{"state", name_of(verdict.state())},
            {"failed", verdict.failed},
            {"watch", verdict.watched},
            {"not_checked", verdict.not_checked},
            {"held", verdict.held}};
}

Json number_or_null(std::optional<double> value) {
    return value ? Json(*value) : Json(nullptr);
}

Json json_of(const std::vector<core::Check>& checks) {
    Json list = Json::array();
    for (const core::Check& check : checks) {
        Json row{{"id", check.id},
                 {"verdict", name_of(check.verdict)},
                 {"value", number_or_null(check.value)},
                 {"limit", json_of_limit(check.limit)},
                 {"unit", si_unit(check.measure)},
                 {"requirement", check.requirement},
                 {"source", check.source.citation},
                 {"message", words(check.message, json_system)},
                 {"marked", json_of_marks(marks_of(check))}};
        if (!check.part.empty()) {
            row["part"] = check.part;
        }
        list.push_back(std::move(row));
    }
    return list;
}

Json json_of(const std::vector<core::Step>& steps) {
    Json list = Json::array();
    for (const core::Step& step : steps) {
        list.push_back({{"quantity", step.quantity},
                        {"value", number_or_null(step.value)},
                        {"unit", si_unit(step.measure)},
                        {"reason", words(step.reason, json_system)},
                        {"source", step.source.citation},
                        {"marked", json_of_marks(step.marks)},
                        {"provenance", name_of(step.provenance)},
                        {"inputs", json_of_inputs(step.reason)}});
    }
    return list;
}

Json json_of(const std::vector<core::Phrase>& phrases) {
    Json list = Json::array();
    for (const core::Phrase& phrase : phrases) {
        list.push_back(words(phrase, json_system));
    }
    return list;
}

Json json_of_items(const std::vector<core::Phrase>& phrases) {
    Json items = Json::array();
    for (const core::Phrase& phrase : phrases) {
        items.push_back(json_of_item(phrase));
    }
    return items;
}

Json json_of(const core::Selection& selection) {
    return {{"specified_strength_mpa", selection.specified_strength_mpa},
            {"required_average_strength_mpa", selection.required_average_strength_mpa},
            {"target_strength_mpa", selection.required_average_strength_mpa},
            {"margin_mpa", selection.margin_mpa},
            {"slump_mm", selection.slump_mm},
            {"nominal_max_size_mm", selection.nominal_max_size_mm},
            {"air_percent", selection.air_percent},
            {"air_at_placing_percent", selection.air_at_placing_percent},
            {"w_cm", selection.w_cm},
            {"w_cm_by_strength", number_or_null(selection.w_cm_by_strength)},
            {"w_cm_by_exposure", number_or_null(selection.w_cm_by_exposure)},
            {"w_cm_governed_by", name_of(selection.w_cm_governed_by)},
            {"table_water_kg_m3", number_or_null(selection.table_water_kg_m3)},
            {"water_reduction_percent", number_or_null(selection.water_reduction_percent)},
            {"water_kg_m3", selection.water_kg_m3},
            {"binder_kg_m3", selection.binder_kg_m3},
            {"coarse_volume", number_or_null(selection.coarse_volume)},
            {"fineness_modulus", number_or_null(selection.fineness_modulus)}};
}

Json json_of(const std::vector<core::Ingredient>& ingredients) {
    Json list = Json::array();
    for (const core::Ingredient& ingredient : ingredients) {
        Json row{{"name", ingredient.name},
                 {"role", core::name_of(ingredient.role)},
                 {"kg_m3", ingredient.kg_m3},
                 {"dry_kg_m3", number_or_null(ingredient.dry_kg_m3)},
                 {"volume_m3", number_or_null(ingredient.volume_m3)}};
        if (ingredient.by_trial) {
            row["by_trial"] = true;
        }
        if (ingredient.material && !ingredient.material->source.empty()) {
            row["source"] = ingredient.material->source;
        }
        list.push_back(std::move(row));
    }
    return list;
}

Json json_of(const core::Totals& totals) {
    return {{"fresh_density_kg_m3", number_or_null(totals.fresh_density_kg_m3)},
            {"volume_m3", number_or_null(totals.volume_m3)},
            {"water_kg_m3", totals.water_kg_m3},
            {"binder_kg_m3", totals.binder_kg_m3},
            {"w_cm", totals.w_cm},
            {"paste_percent", number_or_null(totals.paste_percent)},
            {"mortar_percent", number_or_null(totals.mortar_percent)}};
}

Json json_of(const std::vector<core::BatchItem>& items) {
    Json list = Json::array();
    for (const core::BatchItem& item : items) {
        list.push_back(json_of(item));
    }
    return list;
}

std::string written(const Json& json) {
    demand_finite(json);
    // A name of a mix that a program built need not be UTF-8; what a file states is.
    constexpr auto replaced = Json::error_handler_t::replace;
    return text::printable_json(json.dump(2, ' ', false, replaced)) + "\n";
}

} // namespace boardmark::report
