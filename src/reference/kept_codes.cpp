#include "kept_codes.hpp"

#include "code_tables.hpp"
#include "exposure_classes.hpp"
#include "site_rules.hpp"

#include <algorithm>
#include <vector>

namespace boardmark::reference {
namespace {

/// A code in both systems of units.
struct KeptCode {
    std::string_view name;
    core::Deferred<core::ClassNames> classes;
    core::Deferred<core::CodeTables> us;
    core::Deferred<core::CodeTables> si;
};

KeptCode kept(const CodeData& data) {
    const core::Deferred<core::SiteRules> site{[&data] { return site_rules(data); }};
    const auto in = [&](core::UnitSystem system) {
        return core::Deferred<core::CodeTables>{
            [&data, system, site] { return code_tables(data, system, site); }};
    };
    return {data.find("exposure")->source.work,
            core::Deferred<core::ClassNames>{[&data] { return class_names(data); }},
            in(core::UnitSystem::us), in(core::UnitSystem::si)};
}

std::vector<KeptCode> all_kept() {
    std::vector<KeptCode> codes;
    for (const CodeData& data : embedded_codes()) {
        codes.push_back(kept(data));
    }
    return codes;
}

const KeptCode& named(std::string_view name) {
    static const auto& codes =
        *new std::vector<KeptCode>(all_kept()); // as the tables that hold them
    const auto found = std::ranges::find(codes, name, &KeptCode::name);
    return found == codes.end() ? codes.front() : *found;
}

} // namespace

const core::Deferred<core::CodeTables>& kept_code(std::string_view name, core::UnitSystem system) {
    const KeptCode& code = named(name);
    return system == core::UnitSystem::us ? code.us : code.si;
}

const core::ClassNames& names_of_classes(std::string_view name) {
    return *named(name).classes;
}

} // namespace boardmark::reference
