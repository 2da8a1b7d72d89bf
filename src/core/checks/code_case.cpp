#include <boardmark/core/basis/tables.hpp>

#include "checks.hpp"

namespace boardmark::core {

CodeCase::CodeCase(const Requirements& requirements, const Proportions& proportions,
                   const Tables& tables, const CodeTables* specified_by)
    : stated_{requirements, binder_holds_pozzolan_or_slag(proportions), tables.code}
    , demands_{stated_, tables.code,
               DemandCase{tables.system, proportions.selection.nominal_max_size_mm, requirements}}
    , binder_{count_binder(proportions, tables.code, stated_)}
    , context_{requirements, proportions, tables,  tables.code,
               stated_,      demands_,    binder_, specified_by} {}

} // namespace boardmark::core
