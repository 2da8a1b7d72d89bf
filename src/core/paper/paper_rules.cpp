#include <boardmark/core/paper/paper_rules.hpp>

#include <cassert>

namespace boardmark::core {

const TypicalFigure& PaperRules::operator()(std::string_view name) const {
    const auto found = figures.find(std::string{name});
    assert(found != figures.end());
    return found->second;
}

} // namespace boardmark::core
