#include "names.hpp"

#include <boardmark/text/utf8.hpp>

#include <algorithm>

namespace boardmark::report {
namespace {

constexpr std::size_t widest_name = 22;
constexpr std::size_t end_shown = 8;
constexpr std::string_view cut = "..";

/// The shortest end of a text that leaves at most a width.
std::string ending(std::string_view text, std::size_t width) {
    const std::size_t all = text::display_width(text);
    const std::size_t before = all > width ? all - width : 0;
    return std::string{text.substr(text::beginning(text, before).size())};
}

} // namespace

std::string name_of(core::Verdict verdict) {
    switch (verdict) {
    case core::Verdict::holds:
        return "holds";
    case core::Verdict::fails:
        return "fails";
    case core::Verdict::watch:
        return "watch";
    case core::Verdict::not_checked:
        return "not checked";
    }
    return "";
}

std::string name_of(core::VerdictState state) {
    switch (state) {
    case core::VerdictState::fails:
        return "fails";
    case core::VerdictState::watch:
        return "watch";
    case core::VerdictState::open:
        return "open";
    case core::VerdictState::holds:
        return "holds";
    }
    return "";
}

std::string name_of(core::Mark mark) {
    switch (mark) {
    case core::Mark::given:
        return "given";
    case core::Mark::interpolated:
        return "interpolated";
    case core::Mark::continued:
        return "continued";
    case core::Mark::typical:
        return "typical";
    case core::Mark::from_memory:
        return "from memory";
    case core::Mark::estimate:
        return "estimate";
    }
    return "";
}

std::string name_of(core::Provenance provenance) {
    switch (provenance) {
    case core::Provenance::given:
        return "given";
    case core::Provenance::table:
        return "table";
    case core::Provenance::code:
        return "code";
    case core::Provenance::computed:
        return "computed";
    }
    return "";
}

std::string name_of(core::Governor governor) {
    switch (governor) {
    case core::Governor::strength:
        return "strength";
    case core::Governor::exposure:
        return "exposure";
    case core::Governor::minimum_binder:
        return "minimum binder";
    case core::Governor::given:
        return "given";
    }
    return "";
}

core::Marks marks_of(const core::Check& check) {
    return core::with_confidence({}, check.source);
}

std::vector<std::string> failed_ids(const std::vector<core::Check>& checks) {
    std::vector<std::string> ids;
    for (const core::Check& check : checks) {
        if (check.verdict == core::Verdict::fails) {
            ids.push_back(check.id);
        }
    }
    return ids;
}

std::string in_words(std::string key) {
    std::ranges::replace(key, '_', ' ');
    return key;
}

std::string column_name(const std::string& name) {
    const std::string harmless = text::printable(name);
    if (text::display_width(harmless) <= widest_name) {
        return harmless;
    }
    // The end is kept: names of one plant often differ there.
    return text::beginning(harmless, widest_name - cut.size() - end_shown) + std::string{cut} +
           ending(harmless, end_shown);
}

} // namespace boardmark::report
