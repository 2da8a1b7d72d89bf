#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/fineness_modulus.hpp>

#include "kind_and_standard.hpp"
#include "mix_context.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::input {
namespace {

using core::Kind;
using core::Material;
using core::Role;

std::string belongs_to(Roles roles) {
    std::string text;
    for (const auto& [role, name] :
         {std::pair{Role::binder, "cements and supplementary materials"},
          std::pair{Role::coarse, "coarse aggregate"}, std::pair{Role::fine, "fine aggregate"},
          std::pair{Role::admixture, "admixtures"}}) {
        if (roles & role_bit(role)) {
            text += (text.empty() ? "" : " and ") + std::string{name};
        }
    }
    return text;
}

/// One material that is being read.
struct MaterialReader {
    const MixContext& context;
    const Reading& section;
    std::string_view name;
    Material material;

    Path path(std::string_view key) const { return {"materials", name, key}; }
    const Reading* reading(std::string_view key) const {
        return context.document.find(section, key);
    }
    const Parsed* value(std::string_view key) const {
        const Reading* found = reading(key);
        return found && found->value ? &*found->value : nullptr;
    }
    std::optional<double> number(std::string_view key) const {
        const Parsed* found = value(key);
        return found && !found->is_word ? std::optional{found->number} : std::nullopt;
    }
    std::string text(std::string_view key) const {
        const Parsed* found = value(key);
        return found ? found->text : "";
    }
    std::string place(std::string_view key) const { return dotted(path(key)); }

    void refuse_keys_of_other_kinds() const {
        for (const Reading& found : context.document.below({"materials", name})) {
            if (!(found.field->roles & role_bit(role_of(material.kind)))) {
                context.refuse(*found.key,
                               place(found.key->scalar) + ": this key belongs to " +
                                   belongs_to(found.field->roles) + "; " + std::string{name} +
                                   " is " + std::string{core::name_of(material.kind)},
                               "delete it, or correct 'kind'");
            }
        }
        for (const char* key : {"water_reduction", "retains"}) {
            const bool misplaced = reading(key) && !core::reduces_water(material.kind);
            if (misplaced && role_of(material.kind) == Role::admixture) {
                context.refuse(*reading(key)->key,
                               place(key) + ": this key belongs to water reducers; " +
                                   std::string{name} + " is " +
                                   std::string{core::name_of(material.kind)},
                               "delete it, or correct 'kind'");
            }
        }
    }

    void read_price() {
        const Parsed* price = value("price");
        const Reading* piece = reading("piece");
        const bool by_piece = price && !price->dimension;
        if (by_piece && !context.has(path("piece"))) {
            context.refuse(
                *price->node,
                place("price") +
                    ": the price is by the piece, and the file does not say what one piece holds",
                "add for example 'piece: 94 lb'");
        } else if (piece && !by_piece && (price || !context.has(path("price")))) {
            context.refuse(*piece->key, place("piece") + " is given without a price by the piece",
                           "write the price as '18 USD/piece', or delete it");
        }
        if (!price || (by_piece && !(piece && piece->value))) {
            return;
        }
        const Parsed& counted = by_piece ? *piece->value : *price;
        material.price = core::Price{
            .currency = price->currency,
            .amount = price->number / (by_piece ? counted.number : 1),
            .basis = counted.dimension == units::Dimension::mass ? core::PriceBasis::mass
                                                                 : core::PriceBasis::volume,
            .written = price->text + (by_piece ? " of " + counted.text : "")};
    }

    void read_binder() {
        material.binder.c3a_percent = number("c3a");
        material.binder.strength_class = number("strength_class");
        const Reading* contains = reading("contains");
        if (!contains) {
            return;
        }
        double sum = 0;
        for (const Pair& pair : contains->pairs) {
            material.binder.contains.push_back({pair.key.kind, pair.value.number});
            sum += pair.value.number;
            if (role_of(pair.key.kind) != Role::binder) {
                context.refuse(*pair.key.node,
                               place("contains") + ": " + pair.key.text +
                                   " is not a cementitious material",
                               "list what the mill certificate names");
            }
        }
        if (sum > 100 + 1e-6) {
            context.refuse(*contains->key, place("contains") + " adds up to more than 100 %",
                           "check the mill certificate");
        }
    }

    void read_moisture() {
        auto& figures = material.aggregate;
        const auto stated = context.options.moisture_percent.find(std::string{name});
        const auto moisture = stated == context.options.moisture_percent.end()
                                  ? number("moisture")
                                  : std::optional{stated->second};
        if (!moisture) {
            return;
        }
        const bool free = text("moisture_basis") == "free";
        figures.moisture_percent = *moisture + (free ? figures.absorption_percent.value_or(0) : 0);
    }

    void read_sieves() {
        const Reading* sieves = reading("sieves");
        if (!sieves) {
            return;
        }
        if (const Reading* modulus = reading("fineness_modulus")) {
            context.refuse(*modulus->key,
                           place("fineness_modulus") + " and 'sieves' say the same thing twice",
                           "keep one of the two");
        }
        const auto& series = context.options.vocabulary.fineness_sieves_mm;
        auto pairs = sieves->pairs;
        std::ranges::stable_sort(pairs, std::greater{},
                                 [](const Pair& pair) { return pair.key.number; });
        for (std::size_t i = 0; i < pairs.size(); ++i) {
            const Pair& pair = pairs[i];
            material.aggregate.sieves.push_back({pair.key.number, pair.value.number});
            if (i > 0 && pair.value.number > pairs[i - 1].value.number) {
                context.refuse(*pair.value.node,
                               place("sieves") + ": more passes " + pair.key.text + " than " +
                                   pairs[i - 1].key.text,
                               "percent passing falls from coarse to fine");
            }
        }
        const bool fine = material.kind == Kind::fine_aggregate;
        if (fine && sieves->sound && !core::fineness_modulus(material.aggregate.sieves, series)) {
            context.refuse(*sieves->key,
                           place("sieves") +
                               " has no figure for a sieve that the fineness modulus needs",
                           "give 4.75, 2.36, 1.18, 0.6, 0.3 and 0.15 mm (No. 4 to No. 100)");
        }
    }

    void read_aggregate() {
        auto& figures = material.aggregate;
        figures.relative_density_is_oven_dry = text("relative_density_basis") == "oven-dry";
        figures.absorption_percent = number("absorption");
        figures.nominal_max_size_mm = number("nominal_max_size");
        figures.dry_rodded_density_kg_m3 = number("dry_rodded_density");
        figures.fineness_modulus = number("fineness_modulus");
        const Parsed* typical = value("typical");
        figures.typical = typical && typical->flag;
        read_moisture();
        read_sieves();
        read_words_of_methods();
        read_size_number();
    }

    void read_size_number() {
        const Parsed* stated = context.document.value(path("size_number"));
        if (!stated) {
            return;
        }
        material.aggregate.size_number = stated->text;
        std::string known;
        for (const auto& size :
             context.options.vocabulary.tables(core::UnitSystem::si).grading->coarse) {
            if (size.number == stated->text) {
                return;
            }
            known += (known.empty() ? "" : ", ") + size.number;
        }
        context.refuse(*stated->node,
                       place("size_number") + ": '" + stated->text +
                           "' is no size number of coarse aggregate known here",
                       "one of: " + known);
    }

    /// The place of a word among those that its key knows; nothing where it is not stated.
    std::optional<int> place_of(const char* key) const {
        const Parsed* stated = value(key);
        if (!stated) {
            return std::nullopt;
        }
        const auto& words = reading(key)->field->value.words;
        return static_cast<int>(std::ranges::find(words, stated->text) - words.begin());
    }

    void read_words_of_methods() {
        auto& figures = material.aggregate;
        if (const auto zone = place_of("zone")) {
            figures.zone = *zone + 1;
        }
        if (const auto shape = place_of("shape")) {
            figures.shape = static_cast<core::StoneShape>(*shape);
        }
        if (const auto surface = place_of("surface")) {
            figures.surface = static_cast<core::Surface>(*surface);
        }
        read_passing_600um();
    }

    void read_passing_600um() {
        auto& figures = material.aggregate;
        figures.passing_600um_percent = number("passing_600um");
        const auto sieve = std::ranges::find_if(figures.sieves, [](const core::SievePassing& one) {
            constexpr double opening_mm = 0.6;
            return std::abs(one.opening_mm - opening_mm) < 0.01;
        });
        if (sieve == figures.sieves.end() || material.kind != Kind::fine_aggregate) {
            return;
        }
        if (const Reading* twice = reading("passing_600um")) {
            context.refuse(*twice->key,
                           place("passing_600um") + " and 'sieves' say the same thing twice",
                           "keep one of the two");
        }
        figures.passing_600um_percent = sieve->percent;
    }

    void read_water_reduction() {
        const Reading* curve = reading("water_reduction");
        if (!curve) {
            return;
        }
        if (curve->value && curve->value->is_word) {
            material.admixture.standard_minimum_reduction = true;
            return;
        }
        // Written in a file of materials; a cell of a table, a source of its own too, stands in a
        // mix.
        const bool is_shared = curve->node->source != context.root.source &&
                               curve->node->source == section.node->source;
        if (curve->value && is_shared) {
            context.refuse(*curve->node,
                           place("water_reduction") + ": '" + curve->value->text +
                               "' is given without a dose, and a file of materials has no mix",
                           "write for example '" + curve->value->text + " at 8 fl oz/cwt'");
        }
        demand_rising(*curve, "a higher dose saves less water");
        for (const Pair& pair : curve->pairs) {
            material.admixture.water_reduction.push_back({dose_of(pair.key), pair.value.number});
        }
    }

    void read_slump_gain() {
        if (const Reading* curve = reading("slump_gain")) {
            demand_rising(*curve, "a higher dose gains less slump");
            for (const Pair& pair : curve->pairs) {
                material.admixture.slump_gain.push_back({dose_of(pair.key), pair.value.number});
            }
        }
    }

    /// Times that increase, and a slump that never rises from the whole one at mixing.
    void read_retains() {
        const Reading* table = reading("retains");
        if (!table) {
            return;
        }
        constexpr double minutes_in_day = 1440;
        auto& points = material.admixture.retains;
        for (const Pair& pair : table->pairs) {
            const core::RetentionPoint point{pair.key.number * minutes_in_day, pair.value.number};
            if (point.minutes == 0 && point.percent != 100) {
                context.refuse(*pair.value.node, place("retains") + ": at 0 min all of it is left",
                               "write '0 min: 100 %', or leave that point out");
            } else if (!points.empty() && point.minutes <= points.back().minutes) {
                context.refuse(*pair.key.node, place("retains") + ": the times do not increase",
                               "write them from the earliest to the latest");
            } else if (!points.empty() && point.percent > points.back().percent) {
                context.refuse(*pair.value.node,
                               place("retains") + ": more slump is left later than before",
                               "check the product data sheet");
            }
            points.push_back(point);
        }
    }

    /// Doses of one basis that increase, and an effect that never falls.
    void demand_rising(const Reading& curve, const std::string& falling) const {
        const auto where = [&] { return place(curve.key->scalar); };
        for (std::size_t i = 1; i < curve.pairs.size(); ++i) {
            const Pair& before = curve.pairs[i - 1];
            const Pair& pair = curve.pairs[i];
            if (before.key.dimension != pair.key.dimension) {
                context.refuse(*pair.key.node, where() + ": the doses are in two kinds of unit",
                               "write all by volume or all in percent of the binder");
            } else if (before.key.number >= pair.key.number) {
                context.refuse(*pair.key.node, where() + ": the doses do not increase",
                               "write them from the lowest to the highest");
            } else if (before.value.number > pair.value.number) {
                context.refuse(*pair.value.node, where() + ": " + falling,
                               "check the product data sheet");
            }
        }
    }

    void read_admixture() {
        material.admixture.solids_percent = number("solids");
        read_water_reduction();
        read_slump_gain();
        read_retains();
        if (const Parsed* maximum = value("maximum_dose")) {
            material.admixture.maximum_dose = dose_of(*maximum);
        }
        if (const Parsed* retards = value("retards")) {
            material.admixture.retards = retards->flag;
        }
        read_added_water();
    }

    void read_added_water() {
        const Reading* added = reading("added_water");
        if (added && material.kind != Kind::pigment) {
            context.refuse(*added->key,
                           place("added_water") + ": " + material.name + " is no pigment",
                           "delete it; the liquid of an admixture counts as water by itself");
        }
        material.admixture.added_water_percent = number("added_water");
    }
};

std::optional<Material> read_material(const MixContext& context, std::string_view name) {
    const Path path{"materials", name};
    if (!context.holds_keys(path)) {
        return std::nullopt;
    }
    if (!context.has({"materials", name, "kind"})) {
        context.missing(path, "kind", "", context.add_example({"materials", name, "kind"}));
        return std::nullopt;
    }
    const Parsed* kind = context.document.value({"materials", name, "kind"});
    if (!kind) {
        return std::nullopt;
    }
    MaterialReader reader{context, *context.document.find(path), name,
                          Material{.name = std::string{name}, .kind = kind->kind}};
    reader.material.standard = reader.text("standard");
    reader.material.relative_density = reader.number("relative_density");
    reader.material.chloride_percent = reader.number("chloride");
    reader.material.alkali_percent = reader.number("alkali");
    reader.material.carbon_kg_kg = reader.number("carbon");
    reader.material.temperature_c = reader.number("temperature");
    reader.material.waste_percent = reader.number("waste").value_or(0);
    reader.material.source = reader.text("source");
    reader.read_price();
    reader.refuse_keys_of_other_kinds();
    switch (role_of(kind->kind)) {
    case Role::binder:
        reader.read_binder();
        break;
    case Role::coarse:
    case Role::fine:
        reader.read_aggregate();
        break;
    default:
        reader.read_admixture();
        break;
    }
    refuse_contradictions(context, reader.material);
    return std::move(reader.material);
}

} // namespace

Materials read_materials(const MixContext& context) {
    Materials materials;
    for (const Reading& reading : context.document.below({"materials"})) {
        const std::string& name = reading.key->scalar;
        if (const core::Material* kept = context.kept_material(name)) {
            materials.emplace(name, *kept);
            continue;
        }
        if (std::ranges::count(reserved_names(), std::string_view{name}) > 0) {
            context.refuse(*reading.key,
                           "'" + std::string{name} +
                               "' is a word of 'proportions' and cannot name a material",
                           "give the material another name");
            continue;
        }
        if (auto material = read_material(context, name)) {
            materials.emplace(name, std::move(*material));
        }
    }
    return materials;
}

} // namespace boardmark::input
