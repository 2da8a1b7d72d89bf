#include <boardmark/report/paper/specification_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "paper_flow.hpp"

namespace boardmark::report {
namespace {

Json json_of_clause(const core::Clause& clause) {
    Json object{{"number", clause.number}};
    object.update(json_of_items({clause.text})[0]);
    object["open"] = clause.is_open();
    object["options"] = clause.options;
    object["settles"] = clause.is_open() ? Json(clause.settles) : Json(nullptr);
    object["advice"] =
        clause.advice.text.empty() ? Json(nullptr) : Json(json_of_items({clause.advice})[0]);
    object["reason"] = json_of_items({clause.reason})[0];
    object["source"] = source_words(clause.source);
    return object;
}

} // namespace

std::string json(const SpecificationResult& result) {
    Json object = json_heading("specify", result.heading);
    object["open"] = result.specification.open();
    object["subjects"] = Json::array();
    for (const core::ClauseGroup& group : result.specification.groups) {
        Json clauses = Json::array();
        for (const core::Clause& clause : group.clauses) {
            clauses.push_back(json_of_clause(clause));
        }
        object["subjects"].push_back({{"division", group.division},
                                      {"subject", group.subject},
                                      {"clauses", std::move(clauses)}});
    }
    add_checks(result.heading, object);
    object["cautions"] = json_of(result.specification.cautions);
    return written(object);
}

} // namespace boardmark::report
