#include "faults.hpp"

namespace boardmark::core {
namespace {

void exclude(bool together, Field field, const std::string& other, const FaultList& list) {
    if (together) {
        list.impossible(field, "stands beside " + other + ", and they cannot both be given");
    }
}

} // namespace

void find_selection_faults(const Selections& given, const FaultList& list) {
    list.hold(Field::selected_w_cm, given.w_cm, {.low = 0.15, .high = 1.5});
    list.hold(Field::selected_water, given.water_kg_m3, {.low = 60, .high = 400});
    list.hold(Field::selected_binder, given.binder_kg_m3, {.low = 50, .high = 1200});
    list.hold(Field::selected_air, given.air_percent, {.low = 0, .high = 20});
    list.hold(Field::coarse_volume, given.coarse_volume, {.low = 0.1, .high = 1});
    list.hold(Field::coarse_adjustment, given.coarse_adjustment_percent, {.low = -10, .high = 10});
    list.hold(Field::fine_share, given.fine_share_percent, some_share);
    list.hold(Field::coarse_dry, given.coarse_dry_kg_m3,
              {.low = 0, .high = 3500, .low_itself = false});
    list.hold(Field::fresh_density, given.fresh_density_kg_m3, {.low = 1000, .high = 5000});
    list.hold(Field::fine_share_by_mass, given.fine_share_by_mass_percent, some_share);
    if (given.w_cm && given.water_kg_m3 && given.binder_kg_m3) {
        list.impossible(Field::selected_binder,
                        "stands beside w_cm and water_kg_m3: the third follows from two");
    }
    exclude(given.w_cm_by_exposure && given.w_cm, Field::selected_w_cm, "w_cm_by_exposure", list);
    exclude(given.w_cm_by_exposure && given.binder_kg_m3, Field::selected_binder,
            "w_cm_by_exposure", list);
    exclude(given.coarse_volume && given.fine_share_percent, Field::fine_share, "coarse_volume",
            list);
    exclude(given.coarse_volume && given.coarse_adjustment_percent, Field::coarse_adjustment,
            "coarse_volume", list);
    exclude(given.fine_share_percent && given.coarse_adjustment_percent, Field::coarse_adjustment,
            "fine_share_percent", list);
}

void find_method_faults(Method method, const Selections& given, const FaultList& list) {
    switch (method) {
    case Method::aci_211_1:
    case Method::is_10262:
    case Method::is_10262_2009:
    case Method::bre:
        break;
    default:
        list.unknown(Field::method, std::to_string(static_cast<int>(method)));
        return;
    }
    const auto refuse = [&](bool stated, Field field) {
        if (stated) {
            list.impossible(field, "is a figure of another method than the one asked for");
        }
    };
    const bool by_mass = method == Method::bre;
    const bool by_bulk_volume = method == Method::aci_211_1;
    refuse(!by_mass && given.fresh_density_kg_m3, Field::fresh_density);
    refuse(!by_mass && given.fine_share_by_mass_percent, Field::fine_share_by_mass);
    refuse(by_mass && given.fine_share_percent, Field::fine_share);
    refuse(!by_bulk_volume && given.coarse_volume, Field::coarse_volume);
    refuse(!by_bulk_volume && given.coarse_adjustment_percent, Field::coarse_adjustment);
}

void find_supply_faults(const std::optional<Supply>& supply, const FaultList& list) {
    if (!supply) {
        return;
    }
    list.hold(Field::minimum_load, supply->minimum_load_m3,
              {.low = 0, .high = 20, .low_itself = false});
    if (supply->short_load_charge) {
        constexpr double dearest = 1e15;
        list.hold(Field::short_load_charge, supply->short_load_charge->per_m3,
                  {.low = 0, .high = dearest});
    }
}

} // namespace boardmark::core
