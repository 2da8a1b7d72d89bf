#include "table_doubt.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "supplementary.hpp"

namespace boardmark::core {

Verdict table_doubt(const CheckContext& context) {
    if (has_own_strengths(context.requirements)) {
        return Verdict::holds;
    }
    const double percent = cement_percent(context.proportions);
    return !above(percent, 0) ? Verdict::not_checked
           : below(percent, context.tables.practice.table_cement_percent.value) ? Verdict::watch
                                                                                : Verdict::holds;
}

void append_table_doubt(const CheckContext& context, Phrase& message) {
    if (table_doubt(context) == Verdict::holds) {
        return;
    }
    message.text += "; a table of portland cement, which is {cement_share} of this binder: prove "
                    "it by trials of your own ('requirements.strength_curve')";
    message.arguments.push_back(percent_of("cement_share", cement_percent(context.proportions)));
}

} // namespace boardmark::core
