#include <boardmark/core/wall/salt_at_face.hpp>

#include "../code/site_exposure.hpp"

namespace boardmark::core {

SaltExposure salt_exposure(const Requirements& requirements) {
    const std::string corrosion = class_in_force(requirements, 'C');
    const std::string freezing = class_in_force(requirements, 'F');
    const std::string sulfate = class_in_force(requirements, 'S');
    const Site site = requirements.site.value_or(Site{});
    if (corrosion == "C2" || freezing == "F3") {
        return {SaltAtFace::reaches, corrosion == "C2" ? corrosion : freezing};
    }
    if (site.sea.value_or(Sea::none) != Sea::none) {
        return {SaltAtFace::reaches, sulfate == "S1" ? "S1 by the sea" : "the sea"};
    }
    if (site.deicer == true) {
        return {SaltAtFace::reaches, "deicing salt"};
    }
    // A site without sea and deicer brings no salt, whatever classes are left open.
    const bool site_says_none = site.sea && site.deicer;
    if (!corrosion.empty() || site_says_none) {
        return {SaltAtFace::none, corrosion.empty() ? "the site" : corrosion};
    }
    return {SaltAtFace::not_stated};
}

} // namespace boardmark::core
