#include "finish_checks.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {

Checks check_finish(const CheckContext& context) {
    Checks all;
    if (!context.requirements.board_marked) {
        return all;
    }
    for (const auto check : {check_finish_volumes, check_finish_fines, check_finish_constancy,
                             check_finish_slump, check_finish_deicer}) {
        std::ranges::move(check(context), std::back_inserter(all));
    }
    for (Check& check : all) {
        check.requirement = "board-marked";
    }
    return all;
}

} // namespace boardmark::core
