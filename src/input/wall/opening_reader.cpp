#include <boardmark/core/wall/run_shape.hpp>

#include "wall_sections.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::input {
namespace {

/// One place of one opening, with what a message needs.
struct Placed {
    core::OpeningAt at;
    const Parsed& station;
};

class OpeningReader {
public:
    OpeningReader(const Section& openings, const core::WallRun& run)
        : openings_(openings)
        , run_(run) {}

    std::vector<core::Opening> read() {
        for (const std::string_view name : openings_.names()) {
            const Section section = openings_.below(name);
            if (section.stands()) {
                found_.push_back(read_one(section, name));
            }
        }
        refuse_overlaps();
        refuse_more_than_fit();
        return std::move(found_);
    }

private:
    core::Opening read_one(const Section& section, std::string_view name) const {
        section.demand({"width", "height"});
        core::Opening opening{.name = std::string{name},
                              .width_mm = section.number("width").value_or(0),
                              .height_mm = section.number("height").value_or(0),
                              .depth_mm = section.number("depth"),
                              .sill_m = section.metres("sill"),
                              .at_m = {},
                              .count = section.count("count", 1)};
        read_stations(section, opening);
        if (is_measured()) {
            hold_against_wall(section, opening);
        }
        return opening;
    }

    bool is_measured() const {
        return run_.length_m > 0 && !run_.heights.empty() && run_.thickness_mm > 0;
    }

    static void read_stations(const Section& section, core::Opening& opening) {
        const Reading* at = section.find("at");
        if (!at || !at->sound) {
            return;
        }
        if (at->items.empty()) {
            section.refuse("at", " names no station",
                           "give the stations, or only 'count' where they are not known yet");
            return;
        }
        for (const Parsed& station : at->items) {
            opening.at_m.push_back(station.number / 1000);
        }
        const auto stations = static_cast<int>(at->items.size());
        if (section.value("count") && opening.count != stations) {
            section.refuse("count",
                           fmt::format(" is {}, but 'at' names {} station{}", opening.count,
                                       stations, stations == 1 ? "" : "s"),
                           "delete 'count': the stations are counted");
        }
        opening.count = stations;
    }

    void hold_against_wall(const Section& section, const core::Opening& opening) const {
        if (core::is_longer_than_run(opening, run_)) {
            section.refuse("width", " is wider than the wall is long", "check both figures");
        } else if (core::is_higher_than_run(opening, run_)) {
            section.refuse(section.value("sill") ? "sill" : "height",
                           ": the opening reaches above the top of the wall",
                           "its sill and its height together stay within the wall's height");
        } else if (opening.width_mm > 0 && opening.height_mm > 0 && opening.at_m.empty() &&
                   core::are_more_than_fit(opening, run_)) {
            section.refuse("count", ": so many do not go into the wall, at no place",
                           "check their number and their size, or state where they are");
        } else {
            hold_stations(section, opening);
        }
        if (core::cuts_through(opening, run_)) {
            section.refuse("depth", " is not less than the wall's thickness there",
                           "leave it out where the opening goes through the wall");
        }
    }

    void hold_stations(const Section& section, const core::Opening& opening) const {
        const Reading* at = section.find("at");
        for (std::size_t i = 0; i < opening.at_m.size(); ++i) {
            const Parsed& station = at->items[i];
            const std::string place =
                dotted(section.path("at")) + ": the opening at " + station.text;
            if (core::ends_beyond_run(opening, opening.at_m[i], run_)) {
                section.context().refuse(*station.node, place + " ends beyond the end of the wall",
                                         "stations are those of left edges, from the run's start");
            } else if (core::is_higher_than_run_at(opening, opening.at_m[i], run_)) {
                section.context().refuse(*station.node,
                                         place + " reaches above the top of the wall there",
                                         "lower it, or move it to where the wall is higher");
            }
        }
    }

    /// Every place of every opening, in the order of the file.
    std::vector<Placed> places() const {
        std::vector<Placed> all;
        for (const core::Opening& opening : found_) {
            const Reading* at = openings_.below(opening.name).find("at");
            for (std::size_t i = 0; i < opening.at_m.size() && opening.width_mm > 0; ++i) {
                all.push_back({{&opening, opening.at_m[i]}, at->items[i]});
            }
        }
        return all;
    }

    void refuse_overlaps() const {
        const std::vector<Placed> all = places();
        for (auto later = all.begin(); later != all.end(); ++later) {
            for (auto earlier = all.begin(); earlier != later; ++earlier) {
                if (core::overlap(earlier->at, later->at, run_)) {
                    openings_.context().refuse(
                        *later->station.node,
                        fmt::format("{}: the opening at {} overlaps '{}' at {}",
                                    dotted(openings_.below(later->at.opening->name).path("at")),
                                    later->station.text, earlier->at.opening->name,
                                    earlier->station.text),
                        "move one of the two");
                    break;
                }
            }
        }
    }

    /// What alone is too much is told already.
    void refuse_more_than_fit() const {
        const bool one_alone = std::ranges::any_of(found_, [&](const core::Opening& opening) {
            return opening.at_m.empty() && core::are_more_than_fit(opening, run_);
        });
        if (found_.size() > 1 && is_measured() && !one_alone &&
            core::are_together_more_than_fit(found_, run_)) {
            openings_.below(found_.back().name)
                .refuse("width",
                        ": with the other openings it does not go into the wall, at no place",
                        "check the number and the size of each");
        }
    }

    Section openings_;
    const core::WallRun& run_;
    std::vector<core::Opening> found_ = {};
};

} // namespace

std::vector<core::Opening> read_openings(const Section& openings, const core::WallRun& run) {
    return OpeningReader{openings, run}.read();
}

} // namespace boardmark::input
