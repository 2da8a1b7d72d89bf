#include <boardmark/report/strength/record_report.hpp>

#include "../writing/json_values.hpp"
#include "../writing/measure_units.hpp"
#include "record_counts.hpp"

namespace boardmark::report {
namespace {

template <class Result>
Json record_heading(const Result& result) {
    Json object = json_heading("record", result.title, core::VerdictSummary{}, result.inputs);
    object["checks"] = Json::array();
    object["cautions"] = Json::array();
    return object;
}

Json json_of(const core::RecordedValue& value) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        return *text;
    }
    return number_or_null(std::get<std::optional<double>>(value));
}

template <class Row>
std::string json_of_rows(const RecordList<Row>& listed, const char* name) {
    Json list = Json::array();
    for (const Row& row : listed.rows) {
        Json object = Json::object();
        for (const auto& column : core::record_columns<Row>()) {
            object[std::string{column.key}] = json_of(column.of(row));
        }
        list.push_back(std::move(object));
    }
    Json object = record_heading(listed);
    object[name] = std::move(list);
    return written(object);
}

Json json_of(const std::vector<core::RecordedFile>& files) {
    Json list = Json::array();
    for (const core::RecordedFile& file : files) {
        list.push_back({{"file", file.name},
                        {"kind", file.kind},
                        {"trials", file.trials},
                        {"specimens", file.specimens}});
    }
    return list;
}

} // namespace

std::string json(const RecordSummary& summary) {
    Json mixes = Json::array();
    for (const MixCount& mix : counts_by_mix(summary)) {
        mixes.push_back({{"mix", mix.mix},
                         {"title", mix.title.empty() ? Json(nullptr) : Json(mix.title)},
                         {"trials", mix.trials},
                         {"specimens", mix.specimens}});
    }
    Json object = record_heading(summary);
    object["trials"] = summary.trials.size();
    object["specimens"] = summary.specimens.size();
    object["mixes"] = std::move(mixes);
    object["files"] = json_of(summary.files);
    return written(object);
}

std::string json(const RecordList<core::RecordedTrial>& list) {
    return json_of_rows(list, "trials");
}

std::string json(const RecordList<core::RecordedSpecimen>& list) {
    return json_of_rows(list, "specimens");
}

std::string json(const RecordList<core::RecordedFile>& list) {
    Json object = record_heading(list);
    object["files"] = json_of(list.rows);
    return written(object);
}

std::string json(const SavedRows& saved) {
    Json object = record_heading(saved);
    object["file"] = saved.file;
    object["saved"] = saved.saved;
    object["already_there"] = saved.already_there;
    object["cautions"] = json_of(saved.cautions);
    return written(object);
}

std::string json(const ChartResult& result) {
    Json points = Json::array();
    for (std::size_t i = 0; i < result.points.size(); ++i) {
        const core::ChartPoint& point = result.points[i];
        const std::string signal = name_of(result.chart.signals[i]);
        points.push_back({{"date", point.date},
                          {"batch", point.batch},
                          {"value", point.value},
                          {"target", number_or_null(point.target)},
                          {"signal", signal.empty() ? Json(nullptr) : Json(signal)}});
    }
    Json object = record_heading(result);
    object["chart"] = {{"quantity", result.charted.name},
                       {"unit", si_unit(result.charted.measure)},
                       {"age_d", number_or_null(result.age_d)},
                       {"mix", result.mix},
                       {"title", result.mix_title.empty() ? Json(nullptr) : Json(result.mix_title)},
                       {"mean", result.chart.mean},
                       {"deviation", number_or_null(result.chart.deviation)},
                       {"low_limit", number_or_null(result.chart.low)},
                       {"high_limit", number_or_null(result.chart.high)},
                       {"target", number_or_null(core::common_target(result.points))},
                       {"provisional", result.chart.provisional},
                       {"source", result.rules.limit_in_deviations.source.citation},
                       {"points", std::move(points)}};
    return written(object);
}

} // namespace boardmark::report
