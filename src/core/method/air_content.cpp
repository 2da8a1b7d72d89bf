#include "air_content.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "method_steps.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Unresolved size_out_of_reach(const SizeRow& row, double size_mm) {
    return {{"{source} covers nominal maximum sizes from {smallest} to {largest}; "
             "the stone is {size}",
             {word("source", row.source.citation),
              quantity("smallest", {row.sizes_mm.front(), Measure::aggregate_size}),
              quantity("largest", {row.sizes_mm.back(), Measure::aggregate_size}),
              quantity("size", {size_mm, Measure::aggregate_size})}},
            {{"choose stone of a size that this table covers", {}},
             {"take a code of your own with a table for that size, 'requirements.code: from "
              "FILE'",
              {}}}};
}

Step air_step(double percent, Provenance provenance, Phrase reason) {
    return {.quantity = "air",
            .value = percent,
            .measure = Measure::percent,
            .provenance = provenance,
            .reason = std::move(reason)};
}

Step given_air(double percent, std::string text) {
    Step step = air_step(percent, Provenance::given, {std::move(text), {}});
    step.marks = {Mark::given};
    return step;
}

Step table_air(TableValue value, Provenance provenance, Phrase reason, const Source& source) {
    Step step = air_step(value.value, provenance, std::move(reason));
    step.source = source;
    step.marks = with_confidence(value.marks(), source);
    return step;
}

Outcome<TableValue> air_at_size(const SizeRow& row, double size_mm) {
    const auto value = value_at_size(row, size_mm);
    if (!value) {
        return size_out_of_reach(row, size_mm);
    }
    return *value;
}

/// Entrapped air is there whatever the haul: a loss that is stated beside it changes nothing.
void caution_loss_ignored(const Requirements& requirements, Worksheet& worksheet) {
    if (requirements.air_loss_percent > 0) {
        worksheet.caution([&] {
            return Phrase{"No air is entrained here: the air loss of {loss} is not counted.",
                          {percent_of("loss", requirements.air_loss_percent)}};
        });
    }
}

/// Air that was selected for placing: the batch gets so much more that it is still there.
AirContent as_placed(double percent, bool entrained, const Requirements& requirements,
                     Worksheet& worksheet) {
    if (!entrained) {
        caution_loss_ignored(requirements, worksheet);
        return {percent, percent, entrained};
    }
    const double in_batch_percent = percent + requirements.air_loss_percent;
    if (requirements.air_loss_percent > 0) {
        worksheet.record([&] {
            Step step = air_step(in_batch_percent, Provenance::computed,
                                 {"{placing} at placing and {loss} lost before, by haul, pump and "
                                  "reducer as the file states: the batch has both",
                                  {percent_of("placing", percent),
                                   percent_of("loss", requirements.air_loss_percent)}});
            step.quantity = "air_in_batch";
            return step;
        });
    }
    return {in_batch_percent, percent, entrained};
}

/// Air that was given for the batch: what is left of it at placing.
AirContent as_batched(double percent, bool entrained, const Requirements& requirements,
                      Worksheet& worksheet) {
    if (!entrained) {
        caution_loss_ignored(requirements, worksheet);
    }
    const double placed_percent = at_placing_percent(percent, entrained, requirements);
    if (entrained && requirements.air_loss_percent > 0) {
        worksheet.record([&] {
            Step step = air_step(placed_percent, Provenance::computed,
                                 {"{batch} in the batch less {loss} lost before placing",
                                  {percent_of("batch", percent),
                                   percent_of("loss", requirements.air_loss_percent)}});
            step.quantity = "air_at_placing";
            return step;
        });
    }
    return {percent, placed_percent, entrained};
}

Outcome<bool> known_entrained(AirAtSize air, const Tables& tables) {
    const auto entrained = is_entrained(air, tables);
    if (!entrained) {
        return size_out_of_reach(tables.method.entrapped_air_percent, air.size_mm);
    }
    return *entrained;
}

} // namespace

namespace {

/// Whether a class asks more air than another; each has a row of the same table or none.
bool asks_more_air(const ExposureClass& one, const ExposureClass& other) {
    if (!one.air_percent || !other.air_percent) {
        return one.air_percent.has_value();
    }
    return std::ranges::lexicographical_compare(other.air_percent->values, one.air_percent->values);
}

} // namespace

const ExposureClass* freezing_class(const StatedClasses& classes, const CodeTables& code) {
    const ExposureClass* most = nullptr;
    for (const StatedClass& stated : classes) {
        if (code.categories[stated.exposure->category].asks_air &&
            (!most || asks_more_air(*stated.exposure, *most))) {
            most = stated.exposure;
        }
    }
    return most;
}

const SizeRow* demanded_air(const ExposureClass* freezing) {
    return freezing && freezing->air_percent ? &*freezing->air_percent : nullptr;
}

std::optional<bool> is_entrained(AirAtSize air, const Tables& tables) {
    const auto entrapped = value_at_size(tables.method.entrapped_air_percent, air.size_mm);
    if (!entrapped) {
        return std::nullopt;
    }
    const double least = entrapped->value + tables.method.air_entrained_margin_percent;
    return !below(air.percent, least);
}

double at_placing_percent(double in_batch_percent, bool entrained,
                          const Requirements& requirements) {
    const double lost_percent = entrained ? requirements.air_loss_percent : 0;
    return std::max(in_batch_percent - lost_percent, 0.0);
}

Outcome<AirContent> select_air(const Mix& mix, const StatedClasses& classes, double size_mm,
                               const Tables& tables, Worksheet& worksheet) {
    const Requirements& requirements = mix.requirements;
    const ExposureClass* freezing = freezing_class(classes, tables.code);
    const SizeRow* demanded =
        requirements.air.basis == AirBasis::exposure ? demanded_air(freezing) : nullptr;
    const auto size = [&] { return quantity("size", {size_mm, Measure::aggregate_size}); };

    if (mix.selections.air_percent) {
        const double percent = *mix.selections.air_percent;
        const auto entrained =
            demanded ? Outcome{true} : known_entrained({percent, size_mm}, tables);
        if (!entrained) {
            return entrained.why();
        }
        worksheet.record([&] { return given_air(percent, "given under 'selections'"); });
        return as_batched(percent, *entrained, requirements, worksheet);
    }
    if (requirements.air.basis == AirBasis::stated) {
        const double percent = requirements.air.percent;
        const auto entrained = known_entrained({percent, size_mm}, tables);
        if (!entrained) {
            return entrained.why();
        }
        worksheet.record([&] { return given_air(percent, "required air, stated"); });
        return as_placed(percent, *entrained, requirements, worksheet);
    }
    const SizeRow* by_method = steps_of(tables.method).entrapped_air(tables.method);
    if (!demanded && !by_method) {
        worksheet.record([&] {
            return air_step(0, Provenance::table,
                            {"{method} counts no entrapped air in its volumes",
                             {word("method", tables.method.name)}});
        });
        return as_placed(0, false, requirements, worksheet);
    }
    const SizeRow& row = demanded ? *demanded : *by_method;
    const auto value = air_at_size(row, size_mm);
    if (!value) {
        return value.why();
    }
    worksheet.record([&] {
        return demanded
                   ? table_air(*value, Provenance::code,
                               {"exposure class {class}, nominal maximum size {size}",
                                {word("class", freezing->name), size()}},
                               row.source)
                   : table_air(*value, Provenance::table,
                               {"entrapped air at nominal maximum size {size}; none is entrained",
                                {size()}},
                               row.source);
    });
    return as_placed(value->value, demanded != nullptr, requirements, worksheet);
}

} // namespace boardmark::core
