#include <boardmark/input/values/improbable.hpp>

#include <algorithm>

namespace boardmark::input {
namespace {

/// A text that stands for itself in a phrase.
std::string literal_phrase(const std::string& text) {
    std::string escaped;
    for (const char character : text) {
        escaped += character;
        if (character == '{' || character == '}') {
            escaped += character;
        }
    }
    return escaped;
}

} // namespace

std::vector<core::Phrase> improbable_figures(const Diagnostics& diagnostics) {
    std::vector<core::Phrase> cautions;
    for (const Diagnostic& diagnostic : diagnostics) {
        if (diagnostic.severity == Severity::warning) {
            const std::string advice = diagnostic.advice.empty() ? "" : "; " + diagnostic.advice;
            cautions.push_back({literal_phrase(diagnostic.message + advice), {}});
        }
    }
    return cautions;
}

void add_improbable_figures(const Diagnostics& diagnostics, std::vector<core::Phrase>& cautions) {
    auto place = cautions.begin();
    for (const core::Phrase& caution : improbable_figures(diagnostics)) {
        if (std::ranges::count(cautions, caution.text, &core::Phrase::text) == 0) {
            place = cautions.insert(place, caution) + 1;
        }
    }
}

} // namespace boardmark::input
