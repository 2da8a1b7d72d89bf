#include "../values/section.hpp"
#include "mix_context.hpp"

namespace boardmark::input {
namespace {

std::optional<core::Sea> sea_of(const std::optional<std::string>& word) {
    if (!word) {
        return std::nullopt;
    }
    return *word == "spray"   ? core::Sea::spray
           : *word == "tidal" ? core::Sea::tidal
                              : core::Sea::none;
}

std::optional<core::Wetting> wetting_of(const std::optional<std::string>& word) {
    if (!word) {
        return std::nullopt;
    }
    return *word == "dry"         ? core::Wetting::dry
           : *word == "sheltered" ? core::Wetting::sheltered
           : *word == "rain"      ? core::Wetting::rain
           : *word == "long wet"  ? core::Wetting::long_wet
                                  : core::Wetting::under_water;
}

std::optional<core::Facing> facing_of(const std::optional<std::string>& word) {
    if (!word) {
        return std::nullopt;
    }
    return *word == "vertical" ? core::Facing::vertical : core::Facing::horizontal;
}

void refuse_contradictions(const core::Site& site, const Section& section) {
    const bool reached = site.sea && *site.sea != core::Sea::none;
    if (site.salty_air == false && reached) {
        section.refuse("salty_air", ": no, but 'sea' says that sea water reaches the wall",
                       "write 'salty_air: yes', or leave it out");
    }
    const bool dry = site.wetting == core::Wetting::dry || site.wetting == core::Wetting::sheltered;
    if (dry && (site.wet_when_freezing == true || reached)) {
        section.refuse("wetting", ": the wall is said to stay dry, but other keys say what wets it",
                       "correct one of them");
    }
    if (site.freezing == false && site.wet_when_freezing == true) {
        section.refuse("wet_when_freezing", ": yes, but 'freezing' says no",
                       "write 'freezing: yes', or leave 'wet_when_freezing' out");
    }
    if (site.freezing == true && site.wet_when_freezing == false && site.sea == core::Sea::tidal) {
        section.refuse("wet_when_freezing", ": no, but the tide wets the wall in any season",
                       "write 'wet_when_freezing: yes', or 'sea: spray' where no tide reaches it");
    }
}

} // namespace

std::optional<core::Site> read_site(const MixContext& context) {
    const Section section{context, {"requirements", "site"}};
    if (!section.stands()) {
        return std::nullopt;
    }
    const auto answer = [&](const char* key) {
        return section.value(key) ? std::optional{section.flag(key)} : std::nullopt;
    };
    const core::Site site{.freezing = answer("freezing"),
                          .wet_when_freezing = answer("wet_when_freezing"),
                          .deicer = answer("deicer"),
                          .sea = sea_of(section.text("sea")),
                          .soil_sulfate_percent = section.number("soil_sulfate"),
                          .salty_air = answer("salty_air"),
                          .wetting = wetting_of(section.text("wetting")),
                          .facing = facing_of(section.text("facing")),
                          .aggressive_ground = answer("aggressive_ground")};
    refuse_contradictions(site, section);
    return site;
}

} // namespace boardmark::input
