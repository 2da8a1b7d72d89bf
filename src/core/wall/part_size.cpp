#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../checks/passage.hpp"
#include "cast_part_checks.hpp"
#include "wall_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// The passage of a part that asks for the smaller stone.
Passage narrowest_passage(const CastPart& part, const CodeTables& code) {
    const SizeRules& rules = code.size;
    const double forms_mm = std::max(0.0, part.between_forms_mm - part.relief_mm);
    Passage forms{.id = check_ids::size_form,
                  .what = "narrowest dimension between the forms",
                  .key = "thickness",
                  .dimension_mm = forms_mm,
                  .fraction = rules.of_form,
                  .source = &rules.source,
                  .borrowed_for = rules.borrowed ? &code.name : nullptr};
    if (!part.slab_mm) {
        return forms;
    }
    Passage slab = forms;
    slab.what = "depth of the slab";
    slab.dimension_mm = std::max(0.0, *part.slab_mm - part.relief_mm);
    slab.fraction = rules.of_slab;
    const bool slab_governs = rules.of_slab * *slab.dimension_mm < rules.of_form * forms_mm;
    return slab_governs ? slab : forms;
}

} // namespace

void check_stone_in_parts(const std::vector<CastPart>& parts, double size_mm, const Tables& tables,
                          std::vector<Check>& checks) {
    for (const CastPart& part : parts) {
        Findings findings{checks};
        check_passage(narrowest_passage(part, *tables.code), size_mm, findings);
        Check& check = checks.back();
        for (const std::string& key : part.assumed) {
            const std::string name = "key_" + std::to_string(check.message.arguments.size());
            check.message.text += "; '{" + name + "}' is not stated and may make it narrower";
            check.message.arguments.push_back(word(name, key));
            check.verdict = check.verdict == Verdict::holds ? Verdict::watch : check.verdict;
        }
        check = of_wall(part.name, std::move(check));
    }
}

} // namespace boardmark::core
