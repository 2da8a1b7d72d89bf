#include "finish_checks.hpp"

namespace boardmark::core {

void check_finish(const CheckContext& context, Findings& findings) {
    if (!context.requirements.board_marked) {
        return;
    }
    check_finish_volumes(context, findings);
    check_finish_fines(context, findings);
    check_finish_constancy(context, findings);
    check_finish_slump(context, findings);
    check_finish_deicer(context, findings);
}

} // namespace boardmark::core
