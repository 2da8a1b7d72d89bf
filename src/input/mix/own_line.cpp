#include "own_line.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/strength/line_evidence.hpp>
#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/input/strength/read_strength.hpp>

#include <algorithm>

namespace boardmark::input {
namespace {

constexpr std::string_view from_file = "from ";
constexpr std::string_view curve_key = "strength_curve";

bool is_from_file(const Entry& entry) {
    return entry.key.scalar == curve_key && entry.value.kind == Node::Kind::scalar &&
           entry.value.scalar.starts_with(from_file);
}

/// The results in a file, or nothing where a fault has been told.
std::optional<core::CompleteRecord> read_results(const MixContext& context, const Node& asked,
                                                 Files& files) {
    const std::string name = asked.scalar.substr(from_file.size());
    const Loader& load = context.options.load;
    const SourceText* source =
        fetch(asked, "requirements.strength_curve", name, load, files, context.diagnostics);
    if (!source) {
        return std::nullopt;
    }
    const Loader beside = [&](const std::string& other) {
        return loaded_by(load, shown_beside(name, other));
    };
    auto reading =
        read_strength(source->text(), source->file(),
                      {.load = beside, .classes = context.options.vocabulary.strength_classes});
    for (Diagnostic& diagnostic : reading.diagnostics) {
        context.diagnostics.push_back(std::move(diagnostic));
    }
    return std::move(reading.record);
}

/// The tests of production against their rules, as of the day of the newest batch: what is due
/// later breaks none.
std::optional<core::JudgedResults> judged(const core::CompleteRecord& record,
                                          const Vocabulary& vocabulary) {
    int day = 0;
    for (const core::CastBatch& batch : record->batches) {
        day = std::max(day, batch.cast.value_or(0));
    }
    const auto findings = core::find_strength(record, day, vocabulary.tables(record->system));
    core::JudgedResults results{findings.tests.size(), {}};
    for (const core::Check& check : findings.checks) {
        const bool of_acceptance = check.id == findings.acceptance.mean_id ||
                                   check.is(core::check_ids::strength_single_test);
        if (check.verdict == core::Verdict::fails) {
            results.broken.push_back(check.id);
        } else if (of_acceptance && check.verdict == core::Verdict::not_checked) {
            results.open.push_back(check.id);
        } else if (of_acceptance && check.verdict == core::Verdict::watch) {
            results.watched.push_back(check.id);
        }
    }
    const bool none = results.tests == 0 && results.broken.empty();
    return none ? std::nullopt : std::optional{std::move(results)};
}

} // namespace

std::optional<Node> take_results(Node& root) {
    for (Entry& section : root.entries) {
        auto& entries = section.value.entries;
        const auto found = std::ranges::find_if(entries, is_from_file);
        const auto has_key = [](const Entry& entry) { return entry.key.scalar == curve_key; };
        if (section.key.scalar == "requirements" && found != entries.end() &&
            std::ranges::count_if(entries, has_key) == 1) {
            Node asked = std::move(found->value);
            entries.erase(found);
            return asked;
        }
    }
    return std::nullopt;
}

std::optional<core::OwnLine> read_own_line(const MixContext& context,
                                           const std::optional<Node>& asked, Files& files) {
    const Path side_path{"requirements", "strength_curve_side"};
    const Reading* stated = context.document.find(side_path);
    if (!asked) {
        if (stated) {
            context.refuse(*stated->key,
                           "requirements.strength_curve_side: only the line of a results file has "
                           "sides",
                           "write 'strength_curve: from results.yaml', or delete it");
        }
        return std::nullopt;
    }
    const auto record = read_results(context, *asked, files);
    if (!record) {
        return std::nullopt;
    }
    if ((*record)->specimen.shape == core::SpecimenShape::cube) {
        context.refuse(*asked,
                       "requirements.strength_curve: the results are of cubes, the strength of a "
                       "mix file is of cylinders",
                       "name results of cylinders; nothing is converted here");
        return std::nullopt;
    }
    const double age_d = context.document.number({"requirements", "strength_age"}).value_or(28);
    const auto tests = core::tests_of(
        core::at_nominal_age(*record, age_d, context.options.vocabulary.strength_age_tolerance_d));
    auto points = core::line_points(tests, age_d);
    const std::size_t ratios = core::count_ratios(points);
    auto line = core::fit_line(std::move(points), context.options.vocabulary.line_confidence);
    if (!line) {
        context.refuse(*asked,
                       "requirements.strength_curve: the results hold " + std::to_string(ratios) +
                           " different w/cm at the age of the strength; a line needs three",
                       "add trials, each with its 'w_cm'");
        return std::nullopt;
    }
    const bool itself = context.document.text(side_path) == "line";
    const auto side = itself ? core::LineSide::line : core::LineSide::lower;
    const Vocabulary& words = context.options.vocabulary;
    const int least = core::least_specimens(*record, words.tables((*record)->system).strength);
    return core::OwnLine{std::move(*line), side, asked->scalar.substr(from_file.size()),
                         judged(*record, words), core::evidence_of_line(tests, age_d, least)};
}

} // namespace boardmark::input
