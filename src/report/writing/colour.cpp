#include "colour.hpp"

namespace boardmark::report {

std::string coloured(const std::string& text, core::Verdict verdict) {
    switch (verdict) {
    case core::Verdict::holds:
        return "\x1b[32m" + text + "\x1b[0m";
    case core::Verdict::fails:
        return "\x1b[1;31m" + text + "\x1b[0m";
    case core::Verdict::watch:
        return "\x1b[33m" + text + "\x1b[0m";
    case core::Verdict::not_checked:
        break;
    }
    return text;
}

} // namespace boardmark::report
