#include <boardmark/core/wall/salt_at_face.hpp>

#include "../code/site_exposure.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// The stated class that says so of salt, or nullptr.
const ExposureClass* class_saying(Salt salt, const Requirements& requirements,
                                  const CodeTables& code) {
    for (const std::string& name : requirements.exposure) {
        const ExposureClass* found = code.find_class(name);
        if (found && found->salt == salt) {
            return found;
        }
    }
    return nullptr;
}

/// The sea, with the class that it has where that one is stated.
std::string by_sea(const Requirements& requirements, const CodeTables& code) {
    const bool stated =
        code.seawater && std::ranges::count(requirements.exposure, code.seawater->class_name) > 0;
    return stated ? code.seawater->class_name + " by the sea" : "the sea";
}

/// The classes of the category by which no salt may be stated: "C0, C1 or C2".
std::string classes_about_salt(const CodeTables& code) {
    const auto none = std::ranges::find(code.classes, Salt::none, &ExposureClass::salt);
    std::vector<std::string> names;
    for (const ExposureClass& exposure : code.classes) {
        // A code without a class that says "none" is answered by one that says "some".
        if (none != code.classes.end() ? exposure.category == none->category
                                       : exposure.salt != Salt::unsaid) {
            names.push_back(exposure.name);
        }
    }
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        text += (i == 0 ? "" : i + 1 == names.size() ? " or " : ", ") + names[i];
    }
    return text;
}

} // namespace

SaltExposure salt_exposure(const Requirements& requirements, const CodeTables& code) {
    for (const Salt salt : {Salt::any, Salt::deicers}) {
        if (const ExposureClass* brings = class_saying(salt, requirements, code)) {
            return {SaltAtFace::reaches, brings->name};
        }
    }
    const Site site = requirements.site.value_or(Site{});
    if (site.sea.value_or(Sea::none) != Sea::none) {
        return {SaltAtFace::reaches, by_sea(requirements, code)};
    }
    if (site.deicer == true) {
        return {SaltAtFace::reaches, "deicing salt"};
    }
    if (const ExposureClass* none = class_saying(Salt::none, requirements, code)) {
        return {SaltAtFace::none, none->name};
    }
    // A site without sea and deicer brings no salt, whatever classes are left open.
    return site.sea && site.deicer
               ? SaltExposure{SaltAtFace::none, "the site"}
               : SaltExposure{SaltAtFace::not_stated, "", classes_about_salt(code)};
}

} // namespace boardmark::core
