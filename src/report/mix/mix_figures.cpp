#include "mix_figures.hpp"

#include <cmath>

namespace boardmark::report {

bool all_finite(const MixResult& result) {
    bool finite = true;
    MixFigures{[&](double figure) { finite = finite && std::isfinite(figure); }}.of(result);
    return finite;
}

} // namespace boardmark::report
