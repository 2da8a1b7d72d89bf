#include <boardmark/core/panels/panel_design.hpp>
#include <boardmark/text/closest.hpp>

#include "../fields/wall_fields.hpp"
#include "wall_sections.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace boardmark::input {
namespace {

constexpr std::size_t most_levels = 6;
constexpr std::size_t most_combinations = 1024; // of levels, so that a search stays short
constexpr int most_panels = 64;

/// The words of `panel_features` stand in the order of the features.
core::PanelFeature feature_of(const std::string& written) {
    const auto found = std::ranges::find(panel_features, written);
    return static_cast<core::PanelFeature>(found - std::begin(panel_features));
}

/// What a level is compared by: a time as it is, a text as it is written.
bool alike(const Parsed& one, const Parsed& other) {
    return one.dimension ? one.number == other.number : one.text == other.text;
}

class PanelReader {
public:
    explicit PanelReader(const Section& section)
        : section_{section}
        , factors_{section.below("factors")} {}

    std::optional<core::PanelWishes> read() {
        section_.demand({"factors"});
        core::PanelWishes wishes = simple_wishes();
        for (const std::string_view name : factors_.names()) {
            read_factor(name, wishes);
        }
        if (factors_.stands() && factors_.names().empty()) {
            section_.refuse("factors", " names nothing that differs",
                            "add for example 'species: "
                            "[Douglas fir, spruce]'");
        }
        if (!sound_) {
            return std::nullopt;
        }
        read_questions(wishes);
        hold_numbers(wishes);
        return wishes.factors.empty() ? std::nullopt : std::optional{std::move(wishes)};
    }

private:
    core::PanelWishes simple_wishes() const {
        const Section size = section_.below("size");
        const Section viewing = section_.below("viewing");
        if (size.stands()) {
            size.demand({"length", "height", "thickness"});
        }
        core::PanelWishes wishes{.factors = {},
                                 .repeats = section_.count("repeats", 0),
                                 .length_m = size.metres("length"),
                                 .height_m = size.metres("height"),
                                 .thickness_mm = size.number("thickness"),
                                 .shows = read_features(section_),
                                 .mixer_m3 = section_.number("mixer"),
                                 .allowance_percent = section_.number("allowance"),
                                 .viewing = {.distance_m = viewing.metres("distance"),
                                             .light = viewing.text("light").value_or(""),
                                             .by = viewing.text("by").value_or(""),
                                             .age_d = viewing.number("age")},
                                 .signed_by = section_.text("signed_by").value_or("")};
        if (section_.value("number")) {
            wishes.number = section_.count("number", 0);
        }
        return wishes;
    }

    void read_factor(std::string_view name, core::PanelWishes& wishes) {
        const Reading* levels = factors_.find(name);
        if (!levels || !levels->sound) {
            sound_ = false;
            return;
        }
        if (levels->items.size() < 2 || levels->items.size() > most_levels) {
            factors_.refuse(name,
                            levels->items.size() < 2 ? " has one level: then it is no factor"
                                                     : " has more levels than panels can tell "
                                                       "apart",
                            fmt::format("give 2 to {} levels, first the one that is meant for the "
                                        "wall",
                                        most_levels));
            sound_ = false;
            return;
        }
        core::PanelFactor factor{.name = std::string{name}, .levels = {}};
        for (auto item = levels->items.begin(); item != levels->items.end(); ++item) {
            if (std::any_of(levels->items.begin(), item,
                            [&](const Parsed& before) { return alike(before, *item); })) {
                factors_.context().refuse(*item->node,
                                          dotted(factors_.path(name)) + ": '" + item->text +
                                              "' is named twice",
                                          "two alike panels are asked for by 'repeats'");
                sound_ = false;
            }
            factor.levels.push_back(item->text);
            if (name == "strip_after") {
                constexpr double hours_in_day = 24;
                wishes.strip_after_h.push_back(item->number * hours_in_day);
            }
        }
        wishes.factors.push_back(std::move(factor));
    }

    void read_questions(core::PanelWishes& wishes) const {
        const Reading* questions = section_.find("questions");
        if (!questions || !questions->sound) {
            return;
        }
        for (const Parsed& item : questions->items) {
            if (const auto pair = pair_of(item, wishes)) {
                const bool again = std::ranges::any_of(wishes.pairs, [&](const auto& asked) {
                    return asked.first == pair->first && asked.second == pair->second;
                });
                if (again) {
                    refuse_question(item, " is asked twice", "delete one of the two");
                } else {
                    wishes.pairs.push_back(*pair);
                }
            }
        }
    }

    std::optional<core::PanelPair> pair_of(const Parsed& item,
                                           const core::PanelWishes& wishes) const {
        constexpr std::string_view with = " with ";
        const std::size_t middle = item.text.find(with);
        if (middle == std::string::npos) {
            refuse_question(item, " is no pair of factors",
                            "write for example 'species with release_agent'; what each changes by "
                            "itself is asked anyway");
            return std::nullopt;
        }
        const auto first = place_of(item, item.text.substr(0, middle), wishes);
        const auto second =
            first ? place_of(item, item.text.substr(middle + with.size()), wishes) : std::nullopt;
        if (!first || !second) {
            return std::nullopt;
        }
        if (*first == *second) {
            refuse_question(item, " names one factor twice", "name two factors");
            return std::nullopt;
        }
        return core::PanelPair{std::min(*first, *second), std::max(*first, *second)};
    }

    std::optional<std::size_t> place_of(const Parsed& item, const std::string& name,
                                        const core::PanelWishes& wishes) const {
        std::vector<std::string_view> names;
        for (const core::PanelFactor& factor : wishes.factors) {
            if (factor.name == name) {
                return names.size();
            }
            names.push_back(factor.name);
        }
        const auto near = text::closest(name, names);
        refuse_question(item, ": '" + name + "' is not among the factors",
                        near ? "did you mean '" + std::string{*near} + "'?"
                             : "name factors as they stand under 'factors'");
        return std::nullopt;
    }

    void refuse_question(const Parsed& item, const std::string& what, std::string advice) const {
        section_.context().refuse(
            *item.node, dotted(section_.path("questions")) + ": '" + item.text + "'" + what,
            std::move(advice));
    }

    /// What can be answered by panels that somebody will cast.
    void hold_numbers(const core::PanelWishes& wishes) const {
        if (wishes.factors.empty()) {
            return;
        }
        core::PanelAsk ask{.levels = {}, .pairs = wishes.pairs};
        std::size_t combinations = 1;
        for (const core::PanelFactor& factor : wishes.factors) {
            ask.levels.push_back(static_cast<int>(factor.levels.size()));
            combinations *= factor.levels.size();
        }
        const int least = core::least_panels(ask);
        if (combinations > most_combinations || least > most_panels) {
            section_.refuse("factors",
                            fmt::format(" ask for {} panels at least, out of {} combinations",
                                        least, combinations),
                            "fewer levels, or one programme after the other");
        } else if (wishes.number && *wishes.number < least) {
            section_.refuse("number",
                            fmt::format(" is {}, and the questions need {} panels at least",
                                        *wishes.number, least),
                            "leave it out for the fewest, or ask fewer questions");
        }
    }

    const Section& section_;
    Section factors_;
    bool sound_ = true;
};

} // namespace

std::vector<core::PanelFeature> read_features(const Section& section) {
    std::vector<core::PanelFeature> features;
    const Reading* shows = section.find("shows");
    if (!shows || !shows->sound) {
        return features;
    }
    if (shows->items.empty()) {
        section.refuse("shows", " names nothing", "leave it out, or write 'shows: [face, tie]'");
    }
    for (const Parsed& item : shows->items) {
        const core::PanelFeature feature = feature_of(item.text);
        if (std::ranges::count(features, feature) > 0) {
            section.context().refuse(
                *item.node, dotted(section.path("shows")) + ": '" + item.text + "' is named twice",
                "name each once");
        } else {
            features.push_back(feature);
        }
    }
    return features;
}

std::optional<core::PanelWishes> read_panels(const FileContext& context) {
    const Section section{context, {"panels"}};
    return section.stands() ? PanelReader{section}.read() : std::nullopt;
}

} // namespace boardmark::input
