#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/wall/joint_tables.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <optional>
#include <string>

namespace boardmark::core {

/// Whether chlorides come at the faces from outside, by exposure classes and site of the mix file.
enum class SaltAtFace { none, reaches, not_stated };

struct SaltExposure {
    SaltAtFace at_face;
    std::string by = {}; ///< what says so: a class, "S1 by the sea"; empty where not stated
    std::string open_classes = {}; ///< classes that would say it, "C0, C1 or C2"; if not stated
};

/// Classes of the code that say so, sea water, its spray and deicing salt bring chlorides; other
/// classes say that none come.
SaltExposure salt_exposure(const Requirements& requirements, const CodeTables& code);

/// `ties.salt`: mild steel whose ends stay nearer to the bottom of the deepest relief than the
/// cover or the rule asks, or at the end of an open hole, is a `watch`; stainless steel and glass
/// fibre hold. Nothing where no salt comes.
std::optional<Check> check_tie_salt(const Wall& wall, const SaltExposure& salt,
                                    const Tables& tables);

/// Steel behind one face of a part.
struct SaltyFace {
    std::optional<double> cover_mm;                ///< to the nominal face
    std::optional<double> relief_mm;               ///< depth of the deepest board joint or reveal
    std::string cover_key = "reinforcement.cover"; ///< of the wall file, for what is missing
};

/// `cover.salt`: less cover at the bottom of the deepest relief than the commentary of the code
/// asks where salt comes is a `watch`. Nothing where none comes.
std::optional<Check> check_cover_salt(const SaltyFace& face, const SaltExposure& salt,
                                      const CoverRules& rules);

} // namespace boardmark::core
