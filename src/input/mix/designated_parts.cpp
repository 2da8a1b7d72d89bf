#include "designated_parts.hpp"

#include <boardmark/core/mix/designation.hpp>

#include <regex>

namespace boardmark::input {
namespace {

char letter_of(core::Kind kind) {
    switch (kind) {
    case core::Kind::slag_cement:
        return 'S';
    case core::Kind::ground_limestone:
        return 'L';
    default: // silica fume and metakaolin are pozzolans
        return 'P';
    }
}

} // namespace

std::vector<DesignatedPart> designated_parts(const std::string& standard) {
    static const std::regex type{R"(\bI([SPL]|T)\s*\()"};
    static const std::regex share{R"(\(\s*([SPL]?)(\d+(?:\.\d+)?)\s*\))"};
    std::smatch named;
    const bool c595 =
        core::names_standard(standard, "C595") || core::names_standard(standard, "M240");
    if (!c595 || !std::regex_search(standard, named, type)) {
        return {};
    }
    const char of_type = named[1].str().front();
    std::vector<DesignatedPart> parts;
    for (std::sregex_iterator found{standard.begin(), standard.end(), share}, end; found != end;
         ++found) {
        const std::string own = (*found)[1].str();
        parts.push_back({own.empty() ? of_type : own.front(), std::stod((*found)[2].str())});
    }
    return parts;
}

double contained_percent(const core::Material& cement, char letter) {
    double percent = 0;
    for (const core::Constituent& part : cement.binder.contains) {
        percent += letter_of(part.kind) == letter ? part.percent : 0;
    }
    return percent;
}

} // namespace boardmark::input
