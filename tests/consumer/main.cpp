// A program of somebody else's that uses the installed library: a mix built in memory, no files.

#include <boardmark/boardmark.hpp>

#include <iostream>

using namespace boardmark;

int main() {
    core::Material cement{.name = "cement", .kind = core::Kind::portland_cement};
    core::Material stone{.name = "stone", .kind = core::Kind::coarse_aggregate};
    stone.relative_density = 2.68;
    stone.aggregate.absorption_percent = 0.5;
    stone.aggregate.nominal_max_size_mm = 19;
    stone.aggregate.dry_rodded_density_kg_m3 = 1600;
    core::Material sand{.name = "sand", .kind = core::Kind::fine_aggregate};
    sand.relative_density = 2.64;
    sand.aggregate.absorption_percent = 0.7;
    sand.aggregate.fineness_modulus = 2.8;

    core::Mix mix{
        .title = "Built in memory",
        .system = core::UnitSystem::si,
        .requirements = {
            .code = "ACI 318-19", .exposure = {"F1"}, .strength_mpa = 25, .slump_mm = 75}};
    mix.binder = {{cement, 100}};
    mix.coarse = {{stone, 100}};
    mix.fine = {{sand, 100}};

    const auto worked = boardmark::work(mix);
    std::cout << worked.value().json();
    return core::any_fails(worked.value().checks()) ? 1 : 0;
}
