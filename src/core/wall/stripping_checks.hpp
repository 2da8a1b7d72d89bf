#pragma once

#include "young_concrete.hpp"

#include <vector>

namespace boardmark::core {

/// Adds a further clause to a message, behind a semicolon, with its arguments.
void append_clause(const Phrase& clause, Phrase& message);

/// `stripping.age` of each part that is cast. All faces are struck at one age, so one verdict holds
/// for each.
void add_face_checks(const Wall& wall, const YoungConcrete& young, const AfterPlacing& after,
                     const CuringRules& rules, std::vector<Check>& checks);

/// `stripping.soffit` of each part whose concrete will carry itself once a form below it is gone.
void add_soffit_checks(const Wall& wall, const YoungConcrete& young, const AfterPlacing& after,
                       const CuringRules& rules, std::vector<Check>& checks);

/// `cold.protection`, whatever the weather: not checked where nobody states it.
void add_cold_check(const Wall& wall, const YoungConcrete& young, const AfterPlacing& after,
                    const Tables& tables, std::vector<Check>& checks);

/// The soffits of a wall: benches that stand out or span, and the heads of openings through a run
/// or deeper than half of it, the widest of each run. A bench is one unless it is known to rest on
/// its whole underside.
std::vector<Soffit> soffits_of(const Wall& wall, const YoungConcrete& young, const Tables& tables);

/// The plan for the cold, where there is any.
std::optional<ColdPlan> cold_plan_of(const Wall& wall, const YoungConcrete& young,
                                     const Proportions& proportions, const AfterPlacing& after,
                                     const Tables& tables);

/// Whether a strength was measured that is enough, not later than an age.
bool measured_by(const WallPlacing& placing, double needed_mpa, double age_h);

} // namespace boardmark::core
