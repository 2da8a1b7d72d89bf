#pragma once

namespace boardmark::core {

/// By which method a mix is proportioned.
enum class Method {
    aci_211_1,     ///< ACI 211.1-91, absolute volume; cylinders
    is_10262,      ///< IS 10262:2019; cubes
    is_10262_2009, ///< IS 10262:2009; cubes
    bre,           ///< Design of normal concrete mixes, BRE, second edition 1997; cubes
};

/// How well a site is run, as IS 10262 tells it apart.
enum class SiteControl { good, fair };

/// The shape of the stone, as the water of IS 10262 depends on it.
enum class StoneShape { angular, sub_angular, gravel, rounded };

/// The surface of an aggregate, as the tables of BRE tell it apart.
enum class Surface { crushed, uncrushed };

} // namespace boardmark::core
