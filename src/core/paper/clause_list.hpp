#pragma once

#include <boardmark/core/paper/specification.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// Why a clause stands there.
struct ClauseReason {
    Phrase text;
    Source source = {};
};

/// A reason of the trade that no document at hand states.
ClauseReason trade_reason(std::string text);

/// What may be chosen where the files do not settle it.
struct Choice {
    std::string key; ///< that settles it
    std::vector<std::string> options;
    Phrase advice;
};

/// Gathers the clauses of one subject and numbers them.
class ClauseList {
public:
    ClauseList(std::string division, std::string subject);

    /// A requirement that the files fill.
    void require(Phrase text, ClauseReason reason);

    /// A requirement with a choice at `{choice}`: what was decided, else the options in brackets.
    void choose(const std::string& decided, Phrase text, Choice choice, ClauseReason reason);

    /// The same for a decision of the job, by its key under `decisions`.
    void decide(const JobPapers& job, const std::string& key, Phrase text, Choice choice,
                ClauseReason reason);

    ClauseGroup group() const { return group_; }

private:
    std::string next_number() const;

    ClauseGroup group_;
};

// The subjects, in their order; one that the files do not hold has no clause.
ClauseGroup clauses_of_references(const PaperCase& papers);
ClauseGroup clauses_of_submittals(const PaperCase& papers);
ClauseGroup clauses_of_quality(const PaperCase& papers);
ClauseGroup clauses_of_mockup(const PaperCase& papers);
ClauseGroup clauses_of_concrete(const PaperCase& papers);
ClauseGroup clauses_of_admixtures(const PaperCase& papers);
ClauseGroup clauses_of_reinforcement(const PaperCase& papers);
ClauseGroup clauses_of_formwork(const PaperCase& papers);
ClauseGroup clauses_of_boards(const PaperCase& papers);
ClauseGroup clauses_of_ties(const PaperCase& papers);
ClauseGroup clauses_of_release_agent(const PaperCase& papers);
ClauseGroup clauses_of_curing_materials(const PaperCase& papers);
ClauseGroup clauses_of_sealer(const PaperCase& papers);
ClauseGroup clauses_of_patch_mortar(const PaperCase& papers);
ClauseGroup clauses_of_forms(const PaperCase& papers);
ClauseGroup clauses_of_joints(const PaperCase& papers);
ClauseGroup clauses_of_placing(const PaperCase& papers);
ClauseGroup clauses_of_consolidation(const PaperCase& papers);
ClauseGroup clauses_of_stripping(const PaperCase& papers);
ClauseGroup clauses_of_curing(const PaperCase& papers);
ClauseGroup clauses_of_protection(const PaperCase& papers);
ClauseGroup clauses_of_repair(const PaperCase& papers);
ClauseGroup clauses_of_acceptance(const PaperCase& papers);

/// Whether salt or frost reaches the concrete by the classes that are stated.
bool weather_attacks(const PaperCase& papers);

/// Whether deicers may come by the classes or the site.
bool deicers_come(const PaperCase& papers);

} // namespace boardmark::core
