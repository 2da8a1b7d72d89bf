#include <boardmark/core/basis/step.hpp>

namespace boardmark::core {

Marks with_confidence(Marks marks, const Source& source) {
    if (source.confidence == Confidence::from_memory) {
        marks.push_back(Mark::from_memory);
    }
    return marks;
}

} // namespace boardmark::core
