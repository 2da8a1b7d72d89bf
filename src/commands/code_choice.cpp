#include "code_choice.hpp"

#include <boardmark/reference/tables.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <string>

namespace boardmark::commands {
namespace {

constexpr std::string_view how_to_state =
    "add for example 'exposure_by_code: {EN 206: [XC4, XS1, XF4]}' to 'requirements'";

/// One code by its name: it must be known, and something of it stated.
std::string one_code(const std::string& name, const core::Requirements& asked) {
    const auto known = reference::codes();
    if (std::ranges::count(known, name) == 0 && name != asked.code) {
        throw wrong_command_line(fmt::format("--code: '{}' is not a code known here", name),
                                 fmt::format("known here: {}", fmt::join(known, ", ")));
    }
    const bool stated =
        name == asked.code || asked.site ||
        std::ranges::count(asked.exposure_by_code, name, &core::ClassesByCode::code) > 0;
    if (!stated) {
        throw wrong_command_line(fmt::format("--code: the file states no class of {}", name),
                                 std::string{how_to_state});
    }
    return name;
}

std::vector<std::string> other_codes(const Arguments& arguments, const core::Requirements& asked) {
    std::vector<std::string> names;
    if (const auto name = arguments.value("code")) {
        names.push_back(one_code(*name, asked));
    }
    if (arguments.has("all-codes")) {
        if (asked.exposure_by_code.empty()) {
            throw wrong_command_line("--all-codes: the file states classes of its own code only",
                                     std::string{how_to_state});
        }
        for (const core::ClassesByCode& other : asked.exposure_by_code) {
            names.push_back(other.code);
        }
    }
    return names;
}

} // namespace

std::vector<core::CodeJudgement> asked_codes(const WorkedMix& worked, const Arguments& arguments) {
    if (!arguments.has("code") && !arguments.has("all-codes")) {
        return {};
    }
    const core::Requirements& asked = worked.requirements();
    std::vector<core::CodeJudgement> judged{
        core::judged_by_own_code(worked.mix, worked.proportions, worked.tables)};
    for (const std::string& name : other_codes(arguments, asked)) {
        const bool again = std::ranges::count(judged, name, &core::CodeJudgement::code) > 0;
        if (!again) {
            judged.push_back(
                core::judged_by_other_code(worked.mix, worked.proportions, worked.tables,
                                           *reference::code(name, worked.tables.system)));
        }
    }
    return judged;
}

} // namespace boardmark::commands
