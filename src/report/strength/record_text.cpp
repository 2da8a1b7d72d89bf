#include <boardmark/report/strength/record_report.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/wrap.hpp"
#include "record_counts.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::Measure;

constexpr const char* rows_stand =
    "Rows stand as they were saved; 'boardmark yield' and 'boardmark "
    "strength' judge trials and results.";

Flow heading(const std::string& title) {
    return paragraph("Record " + text::printable(title), {});
}

std::string counted(std::size_t count, const char* noun) {
    return fmt::format("{} {}{}", count, noun, count == 1 ? "" : "s");
}

std::string mix_name(const std::string& mix) {
    return mix.empty() ? "(no mix named)" : column_name(mix);
}

/// Shows values of a row, blank where there is none.
class Shown {
public:
    explicit Shown(const TextStyle& style)
        : system_(style.system) {}

    std::string operator()(std::optional<double> value, Measure measure) const {
        return value ? shown({*value, measure}, system_) : "";
    }

private:
    core::UnitSystem system_;
};

} // namespace

Flow flow_of(const RecordSummary& summary, const TextStyle&) {
    Grid counts{{Align::left, Align::right, Align::left}};
    counts.add({"trials", std::to_string(summary.trials.size()), span_of_dates(summary.trials)});
    counts.add(
        {"specimens", std::to_string(summary.specimens.size()), span_of_dates(summary.specimens)});
    counts.add({"files", std::to_string(summary.files.size()), ""});
    Grid mixes{{Align::left, Align::right, Align::right}};
    for (const MixCount& mix : counts_by_mix(summary)) {
        const std::string title = mix.title.empty() ? "" : ", " + column_name(mix.title);
        mixes.add({mix_name(mix.mix) + title, counted(mix.trials, "trial"),
                   counted(mix.specimens, "specimen")});
    }
    return heading(summary.title) + record_headline(rows_stand) + "\n" + counts + section("MIXES") +
           mixes;
}

Flow flow_of(const RecordList<core::RecordedTrial>& list, const TextStyle& style) {
    const Shown show{style};
    Grid grid{{Align::left, Align::left, Align::right, Align::right, Align::right, Align::right,
               Align::right, Align::left}};
    grid.head({"date", "batch", "slump", "air", "density", "w/cm", "yield", "mix"});
    for (const core::RecordedTrial& trial : list.rows) {
        grid.add(
            {trial.date, column_name(trial.batch), show(trial.slump_mm, Measure::slump),
             show(trial.air_percent, Measure::percent),
             show(trial.density_kg_m3, Measure::fresh_density), show(trial.w_cm, Measure::w_cm),
             trial.relative_yield ? fixed(*trial.relative_yield, 3) : "", mix_name(trial.mix)});
    }
    constexpr std::size_t ratios = 5;
    grid.even_out(ratios);
    return heading(list.title) + record_headline(rows_stand) +
           paragraph(counted(list.rows.size(), "trial") +
                         "; the yield is relative to the intended one",
                     {}) +
           "\n" + grid;
}

Flow flow_of(const RecordList<core::RecordedSpecimen>& list, const TextStyle& style) {
    const Shown show{style};
    Grid grid{{Align::left, Align::left, Align::left, Align::right, Align::right, Align::right,
               Align::left}};
    grid.head({"cast", "batch", "specimen", "age", "strength", "w/cm", "shape"});
    for (const core::RecordedSpecimen& specimen : list.rows) {
        grid.add({specimen.date, column_name(specimen.batch), column_name(specimen.specimen),
                  show(specimen.age_d, Measure::age),
                  show(specimen.strength_mpa, Measure::strength),
                  show(specimen.w_cm, Measure::w_cm), column_name(specimen.shape)});
    }
    constexpr std::size_t ratios = 5;
    grid.even_out(ratios);
    return heading(list.title) + record_headline(rows_stand) +
           paragraph(counted(list.rows.size(), "specimen"), {}) + "\n" + grid;
}

Flow flow_of(const RecordList<core::RecordedFile>& list, const TextStyle&) {
    Grid grid{{Align::right, Align::right, Align::left, Align::left}};
    grid.head({"trials", "specimens", "kind", "file"});
    for (const core::RecordedFile& file : list.rows) {
        grid.add({std::to_string(file.trials), std::to_string(file.specimens),
                  column_name(file.kind), text::printable(file.name)});
    }
    return heading(list.title) + record_headline(rows_stand) +
           paragraph(counted(list.rows.size(), "file"), {}) + "\n" + grid;
}

Flow flow_of(const SavedRows& saved, const TextStyle& style) {
    const Flow told = paragraph(
        fmt::format(
            "saved {} of {} in {}{}", counted(saved.saved, "row"), text::printable(saved.file),
            text::printable(saved.title),
            saved.already_there == 0 ? "" : fmt::format("; {} already there", saved.already_there)),
        {});
    return told + text_of_cautions(saved.cautions, style);
}

namespace {

template <class Result>
std::string page(const Result& result, const TextStyle& style) {
    return html_of(
        flow_of(result, style),
        {.title = "Record " + result.title, .command = "record", .inputs = result.inputs});
}

} // namespace

std::string text(const RecordSummary& summary, const TextStyle& style) {
    return written(flow_of(summary, style), style);
}
std::string html(const RecordSummary& summary, const TextStyle& style) {
    return page(summary, style);
}

std::string text(const RecordList<core::RecordedTrial>& list, const TextStyle& style) {
    return written(flow_of(list, style), style);
}
std::string html(const RecordList<core::RecordedTrial>& list, const TextStyle& style) {
    return page(list, style);
}

std::string text(const RecordList<core::RecordedSpecimen>& list, const TextStyle& style) {
    return written(flow_of(list, style), style);
}
std::string html(const RecordList<core::RecordedSpecimen>& list, const TextStyle& style) {
    return page(list, style);
}

std::string text(const RecordList<core::RecordedFile>& list, const TextStyle& style) {
    return written(flow_of(list, style), style);
}
std::string html(const RecordList<core::RecordedFile>& list, const TextStyle& style) {
    return page(list, style);
}

std::string text(const SavedRows& saved, const TextStyle& style) {
    return written(flow_of(saved, style), style);
}
std::string html(const SavedRows& saved, const TextStyle& style) {
    return page(saved, style);
}

} // namespace boardmark::report
