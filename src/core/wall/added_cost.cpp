#include <boardmark/core/wall/added_cost.hpp>

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

using Amount = std::optional<double> (*)(const AddedCostCase& cost);

/// How the amount of a price follows from the wall. One line for each price.
struct Rule {
    const char* price;
    const char* name;
    Measure measure;
    Amount amount; ///< nothing where the wall does not call for it
    bool of_plain = false;
    const char* instead_of = ""; ///< the price on the other side of a difference
};

std::optional<double> if_any(double amount) {
    return amount > 0 ? std::optional{amount} : std::nullopt;
}

std::optional<double> one_job(const AddedCostCase&) {
    return 1.0;
}
std::optional<double> shown_m2(const AddedCostCase& cost) {
    return if_any(cost.quantities.total.shown_m2);
}
std::optional<double> concrete_m3(const AddedCostCase& cost) {
    return if_any(cost.quantities.order.order_m3);
}
std::optional<double> board_length_m(const AddedCostCase& cost) {
    return if_any(cost.boards.length_m);
}
std::optional<double> board_area_m2(const AddedCostCase& cost) {
    return if_any(cost.boards.length_m * cost.wall.boards->face_width_mm / 1000);
}
std::optional<double> joint_length_m(const AddedCostCase& cost) {
    return if_any(cost.boards.lined_m);
}

double courses_of(const AddedCostCase& cost, double height_m) {
    return std::ceil(height_m / (cost.wall.boards->course_mm / 1000) - 1e-9);
}

/// Two board ends for each course of a corner, on each face that shows.
std::optional<double> mitres(const AddedCostCase& cost) {
    constexpr double ends = 2;
    constexpr double planter_corners = 4;
    double count = 0;
    for (const WallRun& run : cost.wall.runs) {
        const double faces = run.shows == ShownFaces::both ? 2 : 1;
        count += ends * run.corners * faces * courses_of(cost, greatest_height_m(run));
    }
    for (const Planter& planter : cost.wall.planters) {
        count += ends * planter_corners * planter.count * courses_of(cost, planter.height_m);
    }
    return if_any(count);
}

bool ties_are(const AddedCostCase& cost, TieKind kind) {
    return cost.wall.ties && cost.wall.ties->kind == kind;
}
std::optional<double> ties_if(const AddedCostCase& cost, bool which) {
    return which ? if_any(cost.quantities.total.ties) : std::nullopt;
}
std::optional<double> stainless_ties(const AddedCostCase& cost) {
    return ties_if(cost, ties_are(cost, TieKind::stainless_steel));
}
std::optional<double> glass_ties(const AddedCostCase& cost) {
    return ties_if(cost, ties_are(cost, TieKind::glass_fibre));
}
bool ties_differ(const AddedCostCase& cost) {
    return cost.wall.ties && cost.wall.ties->kind != TieKind::mild_steel;
}
std::optional<double> plain_ties(const AddedCostCase& cost) {
    return ties_if(cost, ties_differ(cost));
}
/// With ties of mild steel both walls have their holes patched.
std::optional<double> holes(const AddedCostCase& cost) {
    return ties_differ(cost) ? if_any(cost.quantities.total.tie_holes) : std::nullopt;
}

std::optional<double> full_head_m2(const AddedCostCase& cost) {
    return cost.full_head ? if_any(cost.quantities.total.form_face_m2) : std::nullopt;
}
std::optional<double> relief_m3(const AddedCostCase& cost) {
    return if_any(cost.quantities.total.shown_m2 * cost.wall.boards->relief_mm / 1000);
}
std::optional<double> barred_m2(const AddedCostCase& cost) {
    return cost.wall.reinforcement ? shown_m2(cost) : std::nullopt;
}
std::optional<double> openings(const AddedCostCase& cost) {
    double count = 0;
    for (const WallRun& run : cost.wall.runs) {
        for (const Opening& opening : run.openings) {
            count += opening.count;
        }
    }
    return if_any(count);
}
std::optional<double> embedments(const AddedCostCase& cost) {
    double count = 0;
    for (const Embedment& embedment : cost.wall.embedments) {
        count += embedment.count;
    }
    return if_any(count);
}
std::optional<double> edges_m(const AddedCostCase& cost) {
    return if_any(cost.quantities.total.edges_m);
}
std::optional<double> mockups(const AddedCostCase& cost) {
    return cost.wall.mockup ? if_any(cost.wall.mockup->number) : std::nullopt;
}
std::optional<double> longer_d(const AddedCostCase& cost) {
    const auto stated_h = cost.wall.placing.strip_after_h;
    return stated_h && cost.plain_strip_h ? if_any((*stated_h - *cost.plain_strip_h) / 24)
                                          : std::nullopt;
}

// Release agent, chamfer strips and joint formers are in both walls and stand in no line.
const Rule price_rules[] = {
    {"backing_panels", "panels behind the boards", Measure::area, shown_m2, false, "plain_panels"},
    {"plain_panels", "plain panels instead", Measure::area, shown_m2, true, "backing_panels"},
    {"heavier_forms", "forms for the full liquid head", Measure::area, full_head_m2},
    {"form_hire", "forms standing longer", Measure::age, longer_d},
    {"layout_drawings", "drawings of boards, ties, joints", Measure::count, one_job},
    {"form_design", "design of the formwork", Measure::count, one_job},
    {"board_stock", "boards", Measure::line_length, board_length_m},
    {"board_milling", "sorting and milling", Measure::line_length, board_length_m},
    {"board_treatment", "treatment of the boards", Measure::area, board_area_m2},
    {"board_fixing", "fixing to the pattern", Measure::area, shown_m2},
    {"joint_tape", "tape behind board joints", Measure::line_length, joint_length_m},
    {"mitre", "board ends mitred", Measure::count, mitres},
    {"stainless_steel_tie", "ties of stainless steel", Measure::count, stainless_ties, false,
     "mild_steel_tie"},
    {"glass_fibre_tie", "ties of glass fibre", Measure::count, glass_ties, false, "mild_steel_tie"},
    {"mild_steel_tie", "ties of mild steel instead", Measure::count, plain_ties, true, "*"},
    {"tie_plug", "tie holes plugged", Measure::count, holes, false, "tie_patch"},
    {"tie_patch", "tie holes patched instead", Measure::count, holes, true, "tie_plug"},
    {"concrete", "concrete of this mix", Measure::volume, concrete_m3, false, "ordinary_concrete"},
    {"ordinary_concrete", "ordinary concrete instead", Measure::volume, concrete_m3, true,
     "concrete"},
    {"concrete", "thickness for the relief", Measure::volume, relief_m3},
    {"trial_batches", "trial batches", Measure::count, one_job},
    {"testing", "testing", Measure::count, one_job},
    {"short_loads", "short loads", Measure::count, one_job},
    {"wash_out", "washing out", Measure::count, one_job},
    {"slower_placing", "slower placing", Measure::volume, concrete_m3},
    {"more_vibration", "closer vibration", Measure::volume, concrete_m3},
    {"face_bars", "bars and wire near the face", Measure::area, barred_m2},
    {"face_chairs", "chairs near the face", Measure::area, barred_m2},
    {"opening_labour", "box-outs, labour", Measure::count, openings},
    {"embedment", "embedments", Measure::count, embedments},
    {"embedment_labour", "embedments, labour", Measure::count, embedments},
    {"weather_protection", "weather protection", Measure::area, shown_m2},
    {"curing", "longer curing", Measure::area, shown_m2},
    {"edge_protection", "protection of edges", Measure::line_length, edges_m},
    {"repairs", "repairs", Measure::area, shown_m2},
    {"face_sealer", "sealer", Measure::area, shown_m2},
    {"mockup", "mock-up; high: one fails", Measure::count, mockups},
};

const PriceRange* price_of(const AddedCostCase& cost, const std::string& key) {
    const auto found = cost.wall.prices->item.find(key);
    return found == cost.wall.prices->item.end() ? nullptr : &found->second;
}

/// The price that stands against this one, by the kind of tie where that decides.
std::string opposite(const AddedCostCase& cost, const Rule& rule) {
    if (std::string_view{rule.instead_of} != "*") {
        return rule.instead_of;
    }
    return ties_are(cost, TieKind::glass_fibre) ? "glass_fibre_tie" : "stainless_steel_tie";
}

Money money_of(const Rule& rule, const PriceRange& price, double amount) {
    if (rule.of_plain) {
        return {-price.high * amount, -price.likely * amount, -price.low * amount};
    }
    const bool may_fail = rule.amount == &mockups;
    return {price.low * amount, price.likely * amount, price.high * (amount + (may_fail ? 1 : 0))};
}

void note_missing(const std::string& key, AddedCost& added) {
    if (std::ranges::count(added.missing, key) == 0) {
        added.missing.push_back(key);
    }
}

void add_item(const AddedCostCase& cost, const Rule& rule, AddedCost& added) {
    const auto amount = rule.amount(cost);
    if (!amount) {
        return;
    }
    const PriceRange* price = price_of(cost, rule.price);
    const std::string other = opposite(cost, rule);
    if (!price) {
        note_missing(rule.price, added);
    }
    if (!price || (!other.empty() && !price_of(cost, other))) {
        return;
    }
    added.items.push_back({.price = rule.price,
                           .name = rule.name,
                           .quantity = {*amount, rule.measure},
                           .money = money_of(rule, *price, *amount),
                           .likely_is_middle = !price->likely_stated});
}

/// Where the two concretes are priced, the reducer is in the price of one of them.
void add_reducer(const AddedCostCase& cost, AddedCost& added) {
    const auto volume_m3 = concrete_m3(cost);
    if (!cost.reducer_per_m3 || !volume_m3) {
        return;
    }
    if (price_of(cost, "concrete") && price_of(cost, "ordinary_concrete")) {
        added.reducer_in_concrete_per_m3 = cost.reducer_per_m3;
        return;
    }
    const double money = *cost.reducer_per_m3 * *volume_m3;
    added.items.push_back({.price = "reducer",
                           .name = "reducer less the binder it saves",
                           .quantity = {*volume_m3, Measure::volume},
                           .money = {money, money, money}});
}

/// The price by whose range the total moves most, all its lines together.
std::string most_moving(const std::vector<CostItem>& items) {
    std::string most;
    double widest = 0;
    for (const CostItem& item : items) {
        double range = 0;
        for (const CostItem& other : items) {
            range += other.price == item.price ? other.money.high - other.money.low : 0;
        }
        if (range > widest) {
            widest = range;
            most = item.price;
        }
    }
    return most;
}

} // namespace

std::optional<AddedCost> added_cost(const AddedCostCase& cost) {
    if (!cost.wall.prices || !cost.wall.boards) {
        return std::nullopt;
    }
    AddedCost added;
    added.currency = cost.wall.prices->currency;
    for (const Rule& rule : price_rules) {
        add_item(cost, rule, added);
    }
    add_reducer(cost, added);
    if (!cost.plain_strip_h && cost.wall.placing.strip_after_h) {
        note_missing("form_hire: the age at which a plain wall would be stripped", added);
    }
    for (const CostItem& item : added.items) {
        added.total.low += item.money.low;
        added.total.likely += item.money.likely;
        added.total.high += item.money.high;
    }
    added.most_moving = most_moving(added.items);
    return added;
}

} // namespace boardmark::core
