#pragma once

#include <boardmark/core/strength/control_chart.hpp>
#include <boardmark/core/strength/record_chart.hpp>
#include <boardmark/core/strength/recorded.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// What a record holds, in short.
struct RecordSummary {
    std::string title; ///< the record's file
    const std::vector<core::RecordedFile>& files;
    const std::vector<core::RecordedTrial>& trials;
    const std::vector<core::RecordedSpecimen>& specimens;
    InputFiles inputs = {};
};

/// Rows of a record, or its files.
template <class Row>
struct RecordList {
    std::string title; ///< the record's file
    const std::vector<Row>& rows;
    bool to_the_bit = true; ///< in CSV and SI, so that the rows come back as they are; else rounded
    InputFiles inputs = {};
};

/// What became of rows that were to be saved.
struct SavedRows {
    std::string title; ///< the record's file
    std::string file;  ///< they came from
    std::size_t saved;
    std::size_t already_there;
    std::vector<core::Phrase> cautions = {}; ///< figures that are possible, hardly true
    InputFiles inputs = {};
};

/// A control chart over a record.
struct ChartResult {
    std::string title; ///< the record's file
    core::ChartedName charted;
    std::optional<double> age_d;                 ///< of strengths
    std::string mix;                             ///< may be empty
    std::string mix_title = "";                  ///< where mixes of that name have several
    const std::vector<core::ChartPoint>& points; ///< at least one
    const core::ControlChart& chart;
    const core::ControlChartRules& rules;
    InputFiles inputs = {};
};

/// Text for a terminal, at most 100 columns wide.
std::string text(const RecordSummary& summary, const TextStyle& style);
std::string html(const RecordSummary& summary, const TextStyle& style);
std::string text(const RecordList<core::RecordedTrial>& list, const TextStyle& style);
std::string html(const RecordList<core::RecordedTrial>& list, const TextStyle& style);
std::string text(const RecordList<core::RecordedSpecimen>& list, const TextStyle& style);
std::string html(const RecordList<core::RecordedSpecimen>& list, const TextStyle& style);
std::string text(const RecordList<core::RecordedFile>& list, const TextStyle& style);
std::string html(const RecordList<core::RecordedFile>& list, const TextStyle& style);
std::string text(const SavedRows& saved, const TextStyle& style);
std::string html(const SavedRows& saved, const TextStyle& style);
std::string text(const ChartResult& result, const TextStyle& style);
std::string html(const ChartResult& result, const TextStyle& style);

/// One object each; SI, unrounded.
std::string json(const RecordSummary& summary);
std::string json(const RecordList<core::RecordedTrial>& list);
std::string json(const RecordList<core::RecordedSpecimen>& list);
std::string json(const RecordList<core::RecordedFile>& list);
std::string json(const SavedRows& saved);
std::string json(const ChartResult& result);

/// Rows for a spreadsheet (RFC 4180). Those of trials and specimens can be read back: in SI to the
/// last bit. A text that begins with one of = + - @ ' has one more ' before it.
std::string csv(const RecordSummary& summary, core::UnitSystem system);
std::string csv(const RecordList<core::RecordedTrial>& list, core::UnitSystem system);
std::string csv(const RecordList<core::RecordedSpecimen>& list, core::UnitSystem system);
std::string csv(const RecordList<core::RecordedFile>& list, core::UnitSystem system);
std::string csv(const SavedRows& saved, core::UnitSystem system);
std::string csv(const ChartResult& result, core::UnitSystem system);

} // namespace boardmark::report
