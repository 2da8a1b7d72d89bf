#include <boardmark/input/strength/read_strength.hpp>
#include <boardmark/text/closest.hpp>
#include <boardmark/units/date.hpp>
#include <boardmark/units/quantity.hpp>

#include "../gate/files.hpp"
#include "../reading/file_context.hpp"
#include "../reading/refuse.hpp"
#include "specimen_size.hpp"
#include "specimen_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace boardmark::input {
namespace {

constexpr double lowest_mpa = 2;
constexpr double highest_mpa = 200;

/// Replaces `specimens: from FILE` by what that file holds. Where that is not possible the key is
/// taken away, its fault told.
void fetch_specimens(Node& root, Files& files, const Loader& load, Diagnostics& diagnostics) {
    constexpr std::string_view from = "from ";
    const auto entry = std::ranges::find_if(
        root.entries, [](const Entry& candidate) { return candidate.key.scalar == "specimens"; });
    if (entry == root.entries.end() || entry->value.kind != Node::Kind::scalar ||
        !entry->value.scalar.starts_with(from)) {
        return;
    }
    const SourceText* source =
        fetch(entry->value, "specimens", entry->value.scalar.substr(from.size()), load, files,
              diagnostics);
    auto table = source ? read_specimen_table(*source, diagnostics) : std::nullopt;
    if (!table) {
        root.entries.erase(entry);
        return;
    }
    entry->value = std::move(table->specimens);
    if (!table->batches) {
        return;
    }
    if (const Entry* batches = root.find("batches")) {
        refuse(batches->key,
               "'batches' are given here and in the columns of " + source->file() + " as well",
               "keep one of the two", diagnostics);
        return;
    }
    Node key = entry->key;
    key.scalar = "batches";
    root.entries.push_back({std::move(key), std::move(*table->batches)});
}

class StrengthReader {
public:
    StrengthReader(const FileContext& context, const StrengthOptions& options)
        : context_(context)
        , options_(options) {}

    std::optional<core::StrengthRecord> read() {
        for (const char* key :
             {"title", "reporting", "code", "strength", "specimen", "batches", "specimens"}) {
            context_.demand({key}, "");
        }
        const auto specimen = read_specimen();
        core::StrengthRecord record{
            .title = context_.document.text({"title"}).value_or(""),
            .system = context_.document.text({"reporting"}) == "us" ? core::UnitSystem::us
                                                                    : core::UnitSystem::si,
            .code = context_.document.text({"code"}) == "EN 206" ? core::AcceptanceCode::en_206
                                                                 : core::AcceptanceCode::aci_318,
            .specified_mpa = 0,
            .code_name = context_.document.text({"code"}).value_or(""),
            .strength_age_d = context_.document.number({"strength_age"}).value_or(28),
            .specimen = specimen.value_or(core::SpecimenSize{}),
            .batches = {},
            .specimens = {}};
        read_assessment(record);
        read_strength(record, specimen.has_value());
        read_batches(record);
        read_specimens(record);
        record.nominal_size_mm = context_.document.number({"nominal_max_size"});
        read_cores(record);
        return record;
    }

private:
    std::string code_name() const { return context_.document.text({"code"}).value_or(""); }

    /// The code judges by the strength that a designer specifies, not by a class of strength.
    bool judges_by_specified_strength() const {
        return !code_name().empty() && code_name() != "EN 206";
    }

    std::optional<core::SpecimenSize> read_specimen() const {
        const Parsed* written = context_.document.value({"specimen"});
        if (!written) {
            return std::nullopt;
        }
        const auto size = read_specimen_size(written->text);
        if (!size) {
            context_.refuse(*written->node,
                            "specimen: '" + written->text + "' is neither a cylinder nor a cube",
                            "write for example 'cylinder 4 in x 8 in' or 'cube 150 mm'");
            return std::nullopt;
        }
        if (size->shape == core::SpecimenShape::cube && judges_by_specified_strength()) {
            context_.refuse(*written->node,
                            "specimen: " + code_name() +
                                " judges cylinders; cubes show more strength and are not "
                                "converted here",
                            "enter cylinders, or judge by 'code: EN 206' and a class");
        }
        return size;
    }

    void read_assessment(core::StrengthRecord& record) const {
        const Parsed* assessment = context_.document.value({"assessment"});
        if (!assessment) {
            return;
        }
        if (judges_by_specified_strength()) {
            context_.refuse(*context_.document.find({"assessment"})->key,
                            "'assessment' belongs to EN 206; " + code_name() +
                                " has one kind of acceptance",
                            "delete it");
        }
        if (assessment->text == "identity") {
            record.assessment = core::Assessment::identity;
        }
    }

    void read_strength(core::StrengthRecord& record, bool specimen_is_known) const {
        const Parsed* strength = context_.document.value({"strength"});
        if (!strength || !context_.document.text({"code"})) {
            return;
        }
        if (record.code == core::AcceptanceCode::en_206) {
            read_class(record, *strength, specimen_is_known);
            return;
        }
        const auto reading = units::read_quantity(strength->text);
        const auto* quantity = std::get_if<units::Quantity>(&reading);
        if (!quantity || quantity->unit->dimension != units::Dimension::stress ||
            quantity->inside() < lowest_mpa || quantity->inside() > highest_mpa) {
            context_.refuse(*strength->node,
                            "strength: '" + strength->text + "' is not a specified strength of " +
                                code_name(),
                            "write for example 'strength: 5000 psi'");
            return;
        }
        record.specified_mpa = quantity->inside();
        constexpr double lowest_usual_mpa = 10; // common practice, no source
        if (record.specified_mpa < lowest_usual_mpa) {
            context_.ask_back(*strength->node,
                              "strength: " + strength->text +
                                  " is unusual, rarely below 1500 psi or 10 MPa",
                              "check the figure and its unit; it is used as written");
        }
    }

    void read_class(core::StrengthRecord& record, const Parsed& strength,
                    bool specimen_is_known) const {
        const auto found =
            std::ranges::find(options_.classes, strength.text, &core::StrengthClass::name);
        if (found == options_.classes.end()) {
            std::vector<std::string_view> names;
            for (const core::StrengthClass& known : options_.classes) {
                names.push_back(known.name);
            }
            const auto near = text::closest(strength.text, names);
            context_.refuse(*strength.node,
                            "strength: '" + strength.text + "' is not a strength class of EN 206",
                            near
                                ? "did you mean '" + std::string{*near} + "'?"
                                : "write the class, which says what cylinders and what cubes have: "
                                  "'strength: C30/37'");
            return;
        }
        record.strength_class = found->name;
        if (specimen_is_known) {
            record.specified_mpa = record.specimen.shape == core::SpecimenShape::cube
                                       ? found->cube_mpa
                                       : found->cylinder_mpa;
        }
    }

    void read_batches(core::StrengthRecord& record) {
        for (const std::string_view name : context_.document.names({"batches"})) {
            const Path path{"batches", name};
            if (!context_.holds_keys(path)) {
                continue;
            }
            const auto number = [&](const char* key) {
                return context_.document.number({"batches", name, key});
            };
            core::CastBatch batch{
                .name = std::string{name}, .w_cm = number("w_cm"), .air_percent = number("air")};
            if (context_.document.text({"batches", name, "purpose"}) == "trial") {
                batch.purpose = core::BatchPurpose::trial;
            } else {
                context_.demand({"batches", name, "cast"},
                                "averages of consecutive tests go by the order of casting");
            }
            if (const auto cast = number("cast")) {
                batch.cast = static_cast<int>(*cast);
                refuse_future({"batches", name, "cast"}, *cast, std::string{name} + " is cast");
            }
            places_[std::string{name}] = record.batches.size();
            record.batches.push_back(std::move(batch));
        }
    }

    void refuse_future(const Path& path, double day, const std::string& what) const {
        if (!options_.today || day <= *options_.today) {
            return;
        }
        context_.refuse(*context_.document.find(path)->node,
                        fmt::format("{} on {}, after today, {}", what,
                                    units::written_date(static_cast<int>(std::floor(day))),
                                    units::written_date(*options_.today)),
                        "correct the date or the age; '--today' sets another day");
    }

    void read_specimens(core::StrengthRecord& record) {
        for (const std::string_view name : context_.document.names({"specimens"})) {
            if (!context_.holds_keys({"specimens", name})) {
                continue;
            }
            for (const char* key : {"batch", "age", "strength"}) {
                context_.demand({"specimens", name, key}, "");
            }
            const Parsed* batch = context_.document.value({"specimens", name, "batch"});
            const auto age_d = context_.document.number({"specimens", name, "age"});
            const auto mpa = context_.document.number({"specimens", name, "strength"});
            const auto place = batch ? place_of(*batch) : std::nullopt;
            if (!place || !age_d || !mpa) {
                continue;
            }
            if (const auto cast = record.batches[*place].cast) {
                refuse_future({"specimens", name, "age"}, *cast + *age_d,
                              std::string{name} + " would be crushed");
            }
            record.specimens.push_back({std::string{name}, *place, *age_d, *mpa});
        }
    }

    void read_cores(core::StrengthRecord& record) const {
        for (const std::string_view name : context_.document.names({"cores"})) {
            if (!context_.holds_keys({"cores", name})) {
                continue;
            }
            for (const char* key : {"test", "diameter", "length", "strength"}) {
                context_.demand({"cores", name, key}, "");
            }
            const Parsed* test = context_.document.value({"cores", name, "test"});
            const auto place = test ? place_of(*test) : std::nullopt;
            const auto number = [&](const char* key) {
                return context_.document.number({"cores", name, key});
            };
            const auto day = [&](const char* key) {
                const auto days = number(key);
                return days ? std::optional{static_cast<int>(*days)} : std::nullopt;
            };
            const auto diameter_mm = number("diameter");
            const auto length_mm = number("length");
            const auto mpa = number("strength");
            if (!place || !diameter_mm || !length_mm || !mpa) {
                continue;
            }
            constexpr double hours_in_day = 24;
            core::DrilledCore core{.name = std::string{name},
                                   .batch = *place,
                                   .diameter_mm = *diameter_mm,
                                   .length_mm = *length_mm,
                                   .strength_mpa = *mpa,
                                   .drilled = day("drilled"),
                                   .last_wetted = day("last_wetted"),
                                   .tested = day("tested")};
            if (const auto bagged_d = number("bagged_after")) {
                core.bagged_after_h = *bagged_d * hours_in_day;
            }
            hold_days(core, record.batches[*place]);
            record.cores.push_back(std::move(core));
        }
    }

    /// A core is drilled from what was cast, then wetted, then tested, and not in the future.
    void hold_days(const core::DrilledCore& core, const core::CastBatch& batch) const {
        struct Day {
            const char* key;
            std::optional<int> at;
        };
        const Day days[] = {{"cast", batch.cast},
                            {"drilled", core.drilled},
                            {"last_wetted", core.last_wetted},
                            {"tested", core.tested}};
        const Day* before = nullptr;
        for (const Day& day : days) {
            if (!day.at) {
                continue;
            }
            if (before && *day.at < *before->at) {
                context_.refuse(*context_.document.find({"cores", core.name, day.key})->node,
                                core.name + ": '" + day.key + "' is before '" + before->key + "'",
                                "check the two dates");
            }
            if (&day != days) {
                refuse_future(
                    {"cores", core.name, day.key}, *day.at,
                    core.name + " would be " +
                        (day.key == std::string_view{"last_wetted"} ? "wetted" : day.key));
            }
            before = &day;
        }
    }

    std::optional<std::size_t> place_of(const Parsed& batch) const {
        const auto found = places_.find(batch.text);
        if (found != places_.end()) {
            return found->second;
        }
        if (!context_.has({"batches"}) || context_.has({"batches", batch.text})) {
            return std::nullopt; // told there
        }
        std::vector<std::string_view> names;
        for (const auto& [name, place] : places_) {
            names.push_back(name);
        }
        const auto near = text::closest(batch.text, names);
        context_.refuse(*batch.node, "'" + batch.text + "' is not among the batches",
                        near ? "did you mean '" + std::string{*near} + "'?"
                             : "describe it under 'batches'");
        return std::nullopt;
    }

    const FileContext& context_;
    const StrengthOptions& options_;
    std::map<std::string, std::size_t> places_;
};

/// The results past the door of `core`, or nothing; then its faults are told.
std::optional<core::CompleteRecord> enter(const FileContext& context, core::StrengthRecord record) {
    auto entered = core::complete(std::move(record));
    if (const auto* faults = std::get_if<core::Faults>(&entered)) {
        for (const core::Fault& fault : *faults) {
            context.refuse(*context.document.find({"specimens"})->key, fault.message,
                           "check the figure and its unit");
        }
        return std::nullopt;
    }
    return std::get<core::CompleteRecord>(std::move(entered));
}

} // namespace

StrengthReading read_strength(std::string text, std::string file, const StrengthOptions& options) {
    StrengthReading reading;
    Diagnostics& diagnostics = reading.diagnostics;
    Files files;
    const SourceText& source = files.add(std::move(file), std::move(text));
    auto root = read_tree(source, diagnostics);
    if (!root || refuse_other_kind(*root, FileKind::results, diagnostics)) {
        return reading;
    }
    const bool had_specimens = root->find("specimens") != nullptr;
    fetch_specimens(*root, files, options.load, diagnostics);
    Document document{*root, strength_fields(), diagnostics};
    if (had_specimens && !document.find({"specimens"})) {
        document.mark_told({"specimens"});
        document.mark_told({"batches"});
    }
    const FileContext context{*root, document, strength_fields(), diagnostics};
    auto record = StrengthReader{context, options}.read();
    files.sort(diagnostics);
    if (!has_errors(diagnostics)) {
        reading.record = enter(context, *std::move(record));
    }
    return reading;
}

} // namespace boardmark::input
