#include "remembered_limit.hpp"

namespace boardmark::core {

void append_memory(const Source& source, Phrase& message) {
    if (source.confidence == Confidence::from_memory) {
        message.text += "; the limit is from memory, check it in print";
    }
}

void watch_what_is_from_memory(Check& check) {
    if (check.verdict == Verdict::holds && check.source.confidence == Confidence::from_memory) {
        check.verdict = Verdict::watch;
        append_memory(check.source, check.message);
    }
}

} // namespace boardmark::core
