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

void refuse_contradictions(const core::Site& site, const Section& section) {
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
                          .soil_sulfate_percent = section.number("soil_sulfate")};
    refuse_contradictions(site, section);
    return site;
}

} // namespace boardmark::input
