#include <boardmark/report/paper/submittal_report.hpp>

#include "paper_flow.hpp"

namespace boardmark::report {
namespace {

Json json_of_item(const core::SubmittalItem& item) {
    Json object{{"paper", item.paper}, {"by", item.by}};
    object["when"] = json_of_items({item.when})[0];
    object["due"] = item.due ? Json(core::date_text(*item.due)) : Json(nullptr);
    object["past"] = item.past;
    object["age"] = item.age.empty() ? Json(nullptr) : Json(item.age);
    object["keys"] = item.keys;
    object["source"] = source_words(item.source);
    return object;
}

} // namespace

std::string json(const SubmittalListResult& result) {
    Json object = json_heading("specify", result.heading);
    object["submittals"] = Json::array();
    for (const core::SubmittalItem& item : result.list.items) {
        object["submittals"].push_back(json_of_item(item));
    }
    object["how"] = json_of_items(result.list.how);
    add_checks(result.heading, object);
    object["cautions"] = Json::array();
    return written(object);
}

} // namespace boardmark::report
