#include "batched_reader.hpp"

#include <boardmark/text/closest.hpp>

#include "../values/one_system.hpp"
#include "fresh_test_reader.hpp"
#include "improbable_moistures.hpp"

#include <algorithm>

namespace boardmark::input {
namespace {

using core::Role;
using units::Dimension;

constexpr const char* water_name = "water";

Path batched(std::string_view name) {
    return {"trial", "batched", name};
}

bool is_aggregate(const core::Material& material) {
    const Role role = role_of(material.kind);
    return role == Role::coarse || role == Role::fine;
}

std::vector<core::Material> materials_in(const core::AnyCompleteMix& mix) {
    std::vector<core::Material> materials;
    for (const core::Material* material : core::materials_of(mix)) {
        materials.push_back(*material);
    }
    return materials;
}

core::Charged charged(const Parsed& parsed) {
    const core::Reading reading = reading_of(&parsed);
    return parsed.dimension == Dimension::volume ? core::Charged{std::nullopt, reading}
                                                 : core::Charged{reading, std::nullopt};
}

} // namespace

BatchedReader::BatchedReader(const FileContext& context, const core::AnyCompleteMix& mix,
                             std::string mix_file)
    : context_(context)
    , mix_file_(std::move(mix_file))
    , materials_(materials_in(mix))
    , meant_(refuse_strangers())
    , moistures_are_told_(refuse_strange_moistures()) {}

/// Names that stand for nothing in the mix; returns what they were meant to be.
std::set<std::string> BatchedReader::refuse_strangers() const {
    std::vector<std::string_view> known{water_name};
    for (const core::Material& material : materials_) {
        known.push_back(material.name);
    }
    std::set<std::string> meant;
    for (const std::string_view name : context_.document.names({"trial", "batched"})) {
        if (std::ranges::count(known, std::string_view{name}) > 0) {
            continue;
        }
        const auto near = text::closest(name, known);
        if (near) {
            meant.insert(std::string{*near});
        }
        context_.refuse(*context_.document.find(batched(name))->key,
                        "trial.batched: '" + std::string{name} + "' is no material of the mix in " +
                            mix_file_,
                        near ? "did you mean '" + std::string{*near} + "'?"
                             : "the names are those of the mix file, and 'water'");
    }
    return meant;
}

/// Moistures of what is no aggregate of the mix; returns whether any fault of them has been told.
bool BatchedReader::refuse_strange_moistures() const {
    const Reading* table = context_.document.find({"trial", "moisture"});
    if (!table) {
        return false;
    }
    std::vector<std::string_view> known;
    for (const core::Material& material : materials_) {
        if (is_aggregate(material)) {
            known.push_back(material.name);
        }
    }
    bool told = !table->sound;
    for (const Pair& pair : table->pairs) {
        if (std::ranges::count(known, std::string_view{pair.key.text}) > 0) {
            continue;
        }
        told = true;
        const auto near = text::closest(pair.key.text, known);
        context_.refuse(*pair.key.node,
                        "trial.moisture: '" + pair.key.text + "' is no aggregate of the mix in " +
                            mix_file_,
                        near ? "did you mean '" + std::string{*near} + "'?"
                             : "the names are those of the mix file");
    }
    return told;
}

/// Whether the trial itself states what water the material brought; only an aggregate brings any.
bool BatchedReader::has_moisture_of_the_day(const core::Material& material) const {
    const Reading* table = context_.document.find({"trial", "moisture"});
    const auto states = [&](const Pair& pair) { return pair.key.text == material.name; };
    return !is_aggregate(material) || (table && std::ranges::any_of(table->pairs, states));
}

void BatchedReader::demand_moisture(const core::Material& aggregate) const {
    const Reading* here = context_.document.find(batched(aggregate.name));
    if (!aggregate.aggregate.moisture_percent && here && !moistures_are_told_) {
        context_.refuse(
            *here->key,
            aggregate.name + " has no moisture, neither under 'trial.moisture' nor in " +
                mix_file_ + "; its water is mixing water",
            "measure it and add for example 'moisture: {" + aggregate.name + ": 2.0 %}'");
    }
}

void BatchedReader::demand_amount(std::string_view name, const std::string& why,
                                  const std::string& advice) const {
    if (!context_.has(batched(name)) && !meant_.contains(std::string{name})) {
        context_.missing({"trial", "batched"}, name, why, advice);
    }
}

std::optional<core::BatchedMaterial>
BatchedReader::read_material(const core::Material& material) const {
    const Path path = batched(material.name);
    demand_amount(material.name, "every material of the mix is listed",
                  "add what was weighed, '" + material.name +
                      ": 0 lb' where it was left out on purpose");
    const Parsed* amount = context_.document.value(path);
    if (!amount) {
        return std::nullopt;
    }
    if (role_of(material.kind) != Role::admixture && amount->dimension == Dimension::volume) {
        context_.refuse(*amount->node,
                        dotted(path) + ": " + std::string{core::name_of(material.kind)} +
                            " is weighed; '" + amount->text + "' is a volume",
                        "write for example '26.69 lb'");
        return std::nullopt;
    }
    if (is_aggregate(material)) {
        demand_moisture(material);
    }
    return core::BatchedMaterial{material, charged(*amount), has_moisture_of_the_day(material)};
}

void BatchedReader::demand_one_system() const {
    OneSystem system{context_, "trial.batched"};
    for (const std::string_view name : context_.document.names({"trial", "batched"})) {
        const Parsed* amount = context_.document.value(batched(name));
        if (amount && amount->dimension == Dimension::mass) {
            system.hold(*amount);
        }
    }
    system.tell();
}

void BatchedReader::ask_back_moistures() const {
    std::vector<StatedMoisture> stated;
    const Reading* table = context_.document.find({"trial", "moisture"});
    for (const Pair& pair : table ? table->pairs : std::vector<Pair>{}) {
        const auto found = std::ranges::find(materials_, pair.key.text, &core::Material::name);
        if (found != materials_.end() && found->aggregate.moisture_percent) {
            stated.push_back({&*found, "trial.moisture." + pair.key.text + ": " + pair.value.text,
                              pair.value.node, pair.value.number});
        }
    }
    input::ask_back_moistures(context_, stated);
}

void BatchedReader::read(core::Trial& trial) const {
    context_.demand({"trial", "batched"}, "yield follows from what was weighed");
    if (!context_.holds_keys({"trial", "batched"})) {
        return;
    }
    demand_one_system();
    ask_back_moistures();
    demand_amount(water_name, "it is the water added at the mixer",
                  "add for example 'water: 8.92 lb'");
    if (const Parsed* water = context_.document.value(batched(water_name))) {
        trial.water = charged(*water);
    }
    double binder_kg = 0;
    bool sound = true;
    for (const core::Material& material : materials_) {
        auto one = read_material(material);
        sound = sound && one;
        if (one && role_of(material.kind) == Role::binder) {
            binder_kg += one->amount.kg->value;
        }
        if (one) {
            trial.batched.push_back(std::move(*one));
        }
    }
    if (sound && binder_kg <= 0) {
        context_.refuse(*context_.document.find({"trial", "batched"})->key,
                        "trial.batched: no cementitious material was weighed",
                        "enter what went into the mixer");
    }
}

} // namespace boardmark::input
