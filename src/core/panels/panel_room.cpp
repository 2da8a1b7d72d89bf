#include <boardmark/core/panels/panel_room.hpp>
#include <boardmark/core/panels/panel_tables.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double panel_mm_per_m = 1000;

/// The highest lift of the walls.
std::optional<double> highest_lift_mm(const WallPlan& plan) {
    double highest_m = 0;
    for (const RunPlan& run : plan.runs) {
        highest_m = std::max(highest_m, run.lifts.lift_m);
    }
    return highest_m > 0 ? std::optional{panel_mm_per_m * highest_m} : std::nullopt;
}

/// The box-out that takes the least face: one of its kind is enough to be judged.
const Opening* smallest_box_out(const Wall& wall) {
    const Opening* smallest = nullptr;
    for (const WallRun& run : wall.runs) {
        for (const Opening& opening : run.openings) {
            if (!smallest || opening.width_mm < smallest->width_mm) {
                smallest = &opening;
            }
        }
    }
    return smallest;
}

/// The field of a feature with what the wall gives.
class FieldOf {
public:
    FieldOf(const Wall& wall, const WallPlan& plan, const PanelTables& tables)
        : wall_{wall}
        , plan_{plan}
        , tables_{tables} {}

    FeatureRoom operator()(PanelFeature feature) const {
        const auto printed = std::ranges::find(tables_.fields, feature, &PanelField::feature);
        FeatureRoom room{.feature = feature};
        if (printed->length_mm > 0) {
            room.length_mm = printed->length_mm;
        }
        if (printed->height_mm > 0) {
            room.height_mm = printed->height_mm;
        }
        add_from_wall(room);
        return room;
    }

private:
    void add_from_wall(FeatureRoom& room) const {
        switch (room.feature) {
        case PanelFeature::tie:
            if (wall_.ties) {
                room.length_mm = wall_.ties->across_mm;
                room.height_mm = wall_.ties->up_mm;
            } else {
                room.missing = "ties";
            }
            break;
        case PanelFeature::lift_line:
            if (const auto lift_mm = highest_lift_mm(plan_)) {
                room.height_mm = tables_.lifts.value * *lift_mm;
            } else {
                room.missing = "placing.lift";
            }
            break;
        case PanelFeature::box_out:
            add_box_out(room);
            break;
        default:
            if (!room.height_mm) {
                add_courses(room);
            }
        }
    }

    void add_box_out(FeatureRoom& room) const {
        const double around_mm = 2 * tables_.around_box_out_mm.value;
        if (const Opening* opening = smallest_box_out(wall_)) {
            room.length_mm = opening->width_mm + around_mm;
            room.height_mm = opening->height_mm + around_mm;
        } else {
            room.missing = "openings";
        }
    }

    void add_courses(FeatureRoom& room) const {
        if (wall_.boards) {
            room.height_mm = tables_.courses.value * wall_.boards->course_mm;
        } else {
            room.missing = "boards";
        }
    }

    const Wall& wall_;
    const WallPlan& plan_;
    const PanelTables& tables_;
};

double step_up_m(double mm, const PanelTables& tables) {
    constexpr double conversion = 1e-9;
    const double step_mm = tables.size_step_mm.value;
    return std::ceil(mm / step_mm - conversion) * step_mm / panel_mm_per_m;
}

bool is_known(const FeatureRoom& room) {
    return room.length_mm && room.height_mm;
}

bool fits_into(const FeatureRoom& room, double length_mm, double height_mm) {
    return is_known(room) && !above(*room.length_mm, length_mm) &&
           !above(*room.height_mm, height_mm);
}

/// Fields above each other.
struct FieldColumn {
    double length_mm;
    double left_mm; ///< of its height
};

/// Fields side by side and, where a height has room, above each other. A corner and a joint go
/// through the whole height.
class FieldColumns {
public:
    explicit FieldColumns(double height_mm)
        : height_mm_{height_mm} {}

    /// Length of all columns if the field is placed too.
    double length_with_mm(const FeatureRoom& field) {
        return length_mm_ + (column_for(field) ? 0 : *field.length_mm);
    }

    void place(const FeatureRoom& field) {
        if (FieldColumn* column = column_for(field)) {
            column->left_mm -= *field.height_mm;
            return;
        }
        columns_.push_back(
            {*field.length_mm, goes_through(field) ? 0 : height_mm_ - *field.height_mm});
        length_mm_ += *field.length_mm;
    }

    double length_mm() const { return length_mm_; }

private:
    static bool goes_through(const FeatureRoom& field) {
        return field.feature == PanelFeature::corner || field.feature == PanelFeature::joint;
    }

    FieldColumn* column_for(const FeatureRoom& field) {
        const auto found = std::ranges::find_if(columns_, [&](const FieldColumn& column) {
            return !goes_through(field) && !above(*field.length_mm, column.length_mm) &&
                   !above(*field.height_mm, column.left_mm);
        });
        return found == columns_.end() ? nullptr : &*found;
    }

    double height_mm_;
    double length_mm_ = 0;
    std::vector<FieldColumn> columns_;
};

/// What is wished takes its place, the most important first.
void place_features(PanelRoom& room) {
    if (!room.is_sized()) {
        return;
    }
    const double length_mm = panel_mm_per_m * *room.length_m;
    const double height_mm = panel_mm_per_m * *room.height_m;
    FieldColumns columns{height_mm};
    for (FeatureRoom& one : room.features) {
        one.fits_alone = fits_into(one, length_mm, height_mm);
        one.fits = one.wished && one.fits_alone && !above(columns.length_with_mm(one), length_mm);
        if (one.fits) {
            columns.place(one);
        }
    }
}

/// The stated height where that is enough, and the length that follows from it.
void propose_size(PanelRoom& room, const PanelTables& tables) {
    double height_mm = panel_mm_per_m * room.height_m.value_or(0);
    bool any = false;
    for (const FeatureRoom& one : room.features) {
        if (one.wished && is_known(one)) {
            height_mm = std::max(height_mm, *one.height_mm);
            any = true;
        }
    }
    if (!any) {
        return;
    }
    const double proposed_height_m = step_up_m(height_mm, tables);
    FieldColumns columns{panel_mm_per_m * proposed_height_m};
    for (const FeatureRoom& one : room.features) {
        if (one.wished && is_known(one)) {
            columns.place(one);
        }
    }
    room.proposed_length_m = step_up_m(columns.length_mm(), tables);
    room.proposed_height_m = proposed_height_m;
}

/// All features, the wished ones first.
void add_features(const std::vector<PanelFeature>& wished, const FieldOf& field_of,
                  const PanelTables& tables, PanelRoom& room) {
    for (const PanelFeature feature : wished) {
        room.features.push_back(field_of(feature));
        room.features.back().wished = true;
    }
    for (const PanelField& field : tables.fields) {
        if (std::ranges::count(wished, field.feature) == 0) {
            room.features.push_back(field_of(field.feature));
        }
    }
    place_features(room);
    propose_size(room, tables);
}

} // namespace

bool walls_have(PanelFeature feature, const Wall& wall, const WallPlan& plan) {
    const auto any_run = [&](auto has) { return std::ranges::any_of(plan.runs, has); };
    switch (feature) {
    case PanelFeature::face:
    case PanelFeature::repair: // every mock-up shows how a fault is mended
        return true;
    case PanelFeature::board_joint:
        return wall.boards.has_value();
    case PanelFeature::tie:
        return wall.ties.has_value();
    case PanelFeature::corner:
        return !wall.planters.empty() ||
               std::ranges::any_of(wall.runs, [](const WallRun& run) { return run.corners > 0; });
    case PanelFeature::joint:
        return any_run([](const RunPlan& run) { return !run.joints.positions_m.empty(); });
    case PanelFeature::lift_line:
        return any_run([](const RunPlan& run) { return run.lifts.lifts > 1; });
    case PanelFeature::box_out:
        return smallest_box_out(wall) != nullptr;
    }
    return false;
}

const char* name_of(PanelFeature feature) {
    switch (feature) {
    case PanelFeature::face:
        return "face";
    case PanelFeature::board_joint:
        return "board joint";
    case PanelFeature::tie:
        return "tie";
    case PanelFeature::corner:
        return "corner";
    case PanelFeature::joint:
        return "joint";
    case PanelFeature::lift_line:
        return "lift line";
    case PanelFeature::box_out:
        return "box-out";
    case PanelFeature::repair:
        break;
    }
    return "repair";
}

PanelRoom room_on_panel(const Wall& wall, const WallPlan& plan, const PanelTables& tables) {
    const PanelWishes& wishes = *wall.panels;
    PanelRoom room{.length_m = wishes.length_m, .height_m = wishes.height_m, .features = {}};
    room.wish_stated = !wishes.shows.empty();
    const std::vector<PanelFeature> wished =
        room.wish_stated ? wishes.shows
                         : std::vector{PanelFeature::face, PanelFeature::board_joint};
    add_features(wished, FieldOf{wall, plan, tables}, tables, room);
    return room;
}

PanelRoom room_on_mockup(const Wall& wall, const WallPlan& plan, const PanelTables& tables) {
    PanelRoom room{.features = {}};
    std::vector<PanelFeature> wished;
    if (wall.mockup) {
        room.length_m = wall.mockup->length_m;
        room.height_m = wall.mockup->height_m;
        wished = wall.mockup->shows;
    }
    room.wish_stated = !wished.empty();
    if (wished.empty()) {
        for (const PanelField& field : tables.fields) {
            if (walls_have(field.feature, wall, plan)) {
                wished.push_back(field.feature);
            }
        }
    }
    add_features(wished, FieldOf{wall, plan, tables}, tables, room);
    return room;
}

} // namespace boardmark::core
