#include "strength_doubt.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "strength_record_checks.hpp"
#include "supplementary.hpp"

namespace boardmark::core {
namespace {

/// The most air that the concrete of the table holds; nothing where the method itself takes the air
/// off the strength.
const TypicalFigure* most_air(const CheckContext& context) {
    if (context.tables.method.british) {
        return nullptr;
    }
    const PracticeTables& practice = context.tables.practice;
    return context.proportions.selection.air_entrained ? &practice.table_air_entrained_percent
                                                       : &practice.table_air_plain_percent;
}

/// More air than that; each percent of it costs some of the strength.
bool has_much_air(const CheckContext& context) {
    const TypicalFigure* most = most_air(context);
    return most && above(context.proportions.selection.air_percent, most->value);
}

bool has_little_cement(const CheckContext& context) {
    return below(cement_percent(context.proportions),
                 context.tables.practice.table_cement_percent.value);
}

const LineEvidence* evidence_of(const CheckContext& context) {
    const auto& own = context.requirements.strength_line;
    return own ? &own->evidence : nullptr;
}

/// More air than the batches of the line had, or than nobody knows that they had.
bool has_more_air(const LineEvidence& line, const CheckContext& context) {
    const double spare = context.tables.practice.air_of_results_percent.value;
    return !line.mean_air_percent ||
           above(context.proportions.selection.air_percent, *line.mean_air_percent + spare);
}

Verdict doubt_of(const LineEvidence& line, const CheckContext& context) {
    return has_more_air(line, context) || !line.few.empty() ? Verdict::watch : Verdict::holds;
}

void append_doubt(const LineEvidence& line, const CheckContext& context, Phrase& message) {
    if (!line.mean_air_percent) {
        message.text += "; the results do not state the air of each batch: add 'air'";
    } else if (has_more_air(line, context)) {
        message.text += "; the batches of the results held {line_air} of air, and this concrete "
                        "holds {batch_air}, which weakens it";
        message.arguments.push_back(percent_of("line_air", *line.mean_air_percent));
        message.arguments.push_back(
            percent_of("batch_air", context.proportions.selection.air_percent));
    }
    if (!line.few.empty()) {
        message.text += "; of {few} there are fewer specimens than make a test";
        message.arguments.push_back(word("few", named(line.few)));
    }
}

} // namespace

Verdict strength_doubt(const CheckContext& context) {
    if (const LineEvidence* line = evidence_of(context)) {
        return doubt_of(*line, context);
    }
    if (has_own_strengths(context.requirements)) {
        return Verdict::holds;
    }
    if (!above(cement_percent(context.proportions), 0)) {
        return Verdict::not_checked;
    }
    return has_little_cement(context) || has_much_air(context) ? Verdict::watch : Verdict::holds;
}

void append_strength_doubt(const CheckContext& context, Phrase& message) {
    if (const LineEvidence* line = evidence_of(context)) {
        append_doubt(*line, context, message);
        return;
    }
    if (strength_doubt(context) == Verdict::holds) {
        return;
    }
    if (has_little_cement(context)) {
        message.text += "; a table of portland cement, which is {cement_share} of this binder";
        message.arguments.push_back(
            percent_of("cement_share", cement_percent(context.proportions)));
    }
    if (has_much_air(context)) {
        message.text += "; a table of concrete with up to {table_air} air, and this one holds "
                        "{batch_air}, which weakens it";
        message.arguments.push_back(percent_of("table_air", most_air(context)->value));
        message.arguments.push_back(
            percent_of("batch_air", context.proportions.selection.air_percent));
    }
    message.text += ": prove it by trials of your own ('requirements.strength_curve')";
}

} // namespace boardmark::core
