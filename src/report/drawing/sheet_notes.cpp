#include "sheet_notes.hpp"

#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/quantity_format.hpp"
#include "dimension.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

struct Meaning {
    Ink ink;
    std::string_view words;
};

constexpr Meaning meanings[] = {
    {Ink::board, "board"},
    {Ink::sliver, "cut course or board too narrow to look intended"},
    {Ink::contraction_joint, "contraction joint, corner"},
    {Ink::mitre, "board end mitred at a corner"},
    {Ink::chamfer, "chamfer"},
    {Ink::lift, "line between lifts"},
    {Ink::tie, "tie"},
    {Ink::hardest_tie, "most loaded ties"},
    {Ink::opening, "niche; crossed: opening"},
    {Ink::bar, "bar cut across"},
    {Ink::standing_bar, "upright bar"},
    {Ink::pressure, "pressure of the fresh concrete"},
    {Ink::form_rating, "pressure that the forms are made for"},
    {Ink::match_line, "match line"},
};

bool is_used(Ink ink, const std::vector<View>& views) {
    return std::ranges::any_of(views, [&](const View& view) {
        return std::ranges::any_of(view.marks, [&](const Mark& mark) { return mark.ink == ink; });
    });
}

void draw_symbol(Ink ink, PaperPoint middle_left, View& sheet) {
    constexpr double half_mm = 1.1;
    const auto [x, y] = middle_left;
    switch (ink) {
    case Ink::tie:
    case Ink::hardest_tie:
        sheet.circle(ink, {x + 3, y}, 0.6);
        return;
    case Ink::bar:
        sheet.circle(ink, {x + 3, y}, 0.5);
        return;
    case Ink::board:
    case Ink::sliver:
    case Ink::opening:
    case Ink::pressure:
        sheet.area(
            ink, {{x, y - half_mm}, {x + 6, y - half_mm}, {x + 6, y + half_mm}, {x, y + half_mm}});
        return;
    default:
        sheet.line(ink, {{x, y}, {x + 6, y}});
    }
}

/// "lamp niche: 1 ft 6 in by 1 ft 0 in, 4 in deep, sill at 3 ft 0 in".
std::string told(const core::DrawnOpening& opening, core::UnitSystem system) {
    std::string text =
        fmt::format("{}: {} by {}, {}, sill at {}", text::printable(opening.name),
                    dimension(opening.width_m, system), dimension(opening.height_m, system),
                    opening.depth_m ? dimension(*opening.depth_m, system) + " deep" : "through",
                    dimension(opening.z_m, system));
    if (!opening.place_stated) {
        text += "; its place is not fully stated, so it is taken as evenly spread, at half height";
    }
    return text + ".";
}

/// "Bars of 1/2 in at 10 in along the wall, 5/8 in at 12 in upright, in 2 layers, cover 2 in."
std::string told(const core::Reinforcement& bars, core::UnitSystem system) {
    std::string text;
    const auto add = [&](const std::optional<core::BarGrid>& grid, const char* direction) {
        if (grid) {
            text += fmt::format("{}{} at {} {}", text.empty() ? "Bars of " : ", ",
                                shown({grid->bar_mm, core::Measure::length}, system),
                                dimension(grid->spacing_mm / 1000, system), direction);
        }
    };
    add(bars.horizontal, "along the wall");
    add(bars.vertical, "upright");
    return text + fmt::format(", in {} layer{}, cover {}.", bars.layers,
                              bars.layers == 1 ? "" : "s",
                              dimension(bars.cover_mm.value_or(0) / 1000, system));
}

void add_once(std::string note, std::vector<std::string>& notes) {
    if (std::ranges::find(notes, note) == notes.end()) {
        notes.push_back(std::move(note));
    }
}

void tell_elevations(const DrawingResult& result, const std::string& part, core::UnitSystem system,
                     std::vector<std::string>& notes) {
    double hardest_kn = 0;
    for (const core::Elevation& elevation : result.plan.layout.elevations) {
        if (elevation.part != part) {
            continue;
        }
        for (const core::DrawnOpening& opening : elevation.openings) {
            add_once(told(opening, system), notes);
        }
        if (const core::DrawnTie* tie = core::hardest_tie(elevation)) {
            hardest_kn = std::max(hardest_kn, tie->load_kn);
        }
        if (std::ranges::any_of(elevation.joints, [&](const core::FaceJoint& joint) {
                return is_shown_rounded(joint.x_m, system);
            })) {
            add_once(fmt::format("Divided lengths are shown to {} and may not add up: set out from "
                                 "the whole length.",
                                 system == core::UnitSystem::us ? "1/8 in" : "1 mm"),
                     notes);
        }
        if (elevation.chamfer_m > 0) {
            add_once(fmt::format("Edges and openings are chamfered by {}; sections leave it out.",
                                 dimension(elevation.chamfer_m, system)),
                     notes);
        }
    }
    if (hardest_kn > 0) {
        notes.push_back("Most loaded tie: " +
                        shown({hardest_kn, core::Measure::force, core::Keep::at_least}, system) +
                        ".");
    }
}

void tell_section(const DrawingResult& result, const std::string& part, core::UnitSystem system,
                  std::vector<std::string>& notes) {
    const auto& sections = result.plan.layout.sections;
    const auto section = std::ranges::find(sections, part, &core::WallSection::part);
    if (section == sections.end()) {
        return;
    }
    if (const auto& bars = result.wall.reinforcement;
        bars && (!section->bars.empty() || !section->standing.empty())) {
        notes.push_back(told(*bars, system));
        notes.emplace_back("Bars along the wall are drawn outside the upright ones, the lowest "
                           "half a space up: the file states size, spacing and cover, not places.");
    }
    if (!section->footing.empty()) {
        notes.emplace_back("The footing is drawn centred and the ground is not drawn: the file "
                           "does not say where they are.");
    }
    if (!section->pressure.empty()) {
        notes.push_back(words(core::form_caution(), core::UnitSystem::si));
    }
}

/// What fails anywhere, on each sheet: a drawing goes its way without the results.
void tell_failures(const DrawingResult& result, std::vector<std::string>& notes) {
    auto summary = core::verdicts_of(result.plan.checks);
    summary.add(result.plan.mix_checks);
    std::string titles;
    for (const std::string& id : summary.failed) {
        titles += (titles.empty() ? "" : ", ") + std::string{core::title_of(id)};
    }
    if (!titles.empty()) {
        notes.push_back("DO NOT BUILD FROM THIS SHEET before it is settled what fails: " + titles +
                        ".");
    }
}

void tell_embedments(const core::Wall& wall, std::vector<std::string>& notes) {
    std::string names;
    for (const core::Embedment& embedment : wall.embedments) {
        names += fmt::format("{}{} ({})", names.empty() ? "" : ", ",
                             text::printable(embedment.name), embedment.count);
    }
    if (!names.empty()) {
        notes.push_back("Cast in somewhere, and not drawn: " + names +
                        ". The file does not say where.");
    }
}

} // namespace

std::vector<std::string> notes_on(const DrawingResult& result, const std::string& part,
                                  core::UnitSystem system) {
    std::vector<std::string> notes;
    tell_failures(result, notes);
    for (const core::Check& check : result.plan.checks) {
        const bool fails = check.verdict == core::Verdict::fails;
        const bool watched = check.verdict == core::Verdict::watch;
        const bool layout = check.id.starts_with("layout.");
        if (check.part == part &&
            ((fails && (layout || check.id.starts_with("forms."))) || (watched && layout))) {
            notes.push_back((fails ? "FAILS: " : "To watch: ") + words(check.message, system) +
                            ".");
        }
    }
    tell_elevations(result, part, system, notes);
    tell_section(result, part, system, notes);
    tell_embedments(result.wall, notes);
    return notes;
}

std::vector<std::string> wrapped_note(const std::string& text, double width_mm) {
    std::vector<std::string> lines(1);
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t end = std::min(text.find(' ', from), text.size());
        const std::string word = text.substr(from, end - from);
        const std::string longer = lines.back().empty() ? word : lines.back() + " " + word;
        if (!lines.back().empty() && width_of_words_mm(longer, letter_mm) > width_mm) {
            lines.push_back(word);
        } else {
            lines.back() = longer;
        }
        from = end + 1;
    }
    return lines;
}

double draw_key(const std::vector<View>& views, PaperPoint corner, double width_mm, View& sheet) {
    constexpr double row_mm = 4;
    double x_mm = corner.x_mm;
    double y_mm = corner.y_mm + row_mm / 2;
    for (const Meaning& meaning : meanings) {
        if (!is_used(meaning.ink, views)) {
            continue;
        }
        const double takes_mm = 7 + width_of_words_mm(meaning.words, letter_mm) + 3;
        if (x_mm + takes_mm > corner.x_mm + width_mm) {
            x_mm = corner.x_mm;
            y_mm += row_mm;
        }
        draw_symbol(meaning.ink, {x_mm, y_mm}, sheet);
        sheet.words(Ink::lettering, {x_mm + 7, y_mm + 0.9}, std::string{meaning.words});
        x_mm += takes_mm;
    }
    return y_mm + row_mm / 2 - corner.y_mm;
}

} // namespace boardmark::report
