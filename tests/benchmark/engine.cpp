// What one mix costs: to read, to proportion with its reasons, to hold against every requirement,
// to write. The mix is examples/quay-wall.yaml.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "support.hpp"

#include <benchmark/benchmark.h>

#include <fstream>
#include <iterator>

namespace {

using namespace boardmark;

std::string text_of_example() {
    std::ifstream file{"examples/quay-wall.yaml"};
    std::string text{std::istreambuf_iterator<char>{file}, {}};
    if (text.empty()) {
        throw std::runtime_error("run from the top of the checkout: no examples/quay-wall.yaml");
    }
    return text;
}

const core::CompleteMix& example() {
    static const core::AnyCompleteMix mix =
        test::read(text_of_example(), input::Purpose::proportion);
    return std::get<core::CompleteMix>(mix);
}

const core::Tables& tables() {
    static const core::Tables tables = reference::tables(core::UnitSystem::us);
    return tables;
}

void reading(benchmark::State& state) {
    const std::string text = text_of_example();
    const auto options = test::read_options(input::Purpose::proportion);
    for ([[maybe_unused]] auto _ : state) {
        benchmark::DoNotOptimize(input::read_mix(text, "quay-wall.yaml", options));
    }
}
BENCHMARK(reading)->Unit(benchmark::kMicrosecond);

void figures_of_a_mix(benchmark::State& state) {
    core::Proportions proportions{};
    for ([[maybe_unused]] auto _ : state) {
        benchmark::DoNotOptimize(core::figures(example(), tables(), proportions));
    }
}
BENCHMARK(figures_of_a_mix);

void proportions_with_reasons(benchmark::State& state) {
    for ([[maybe_unused]] auto _ : state) {
        benchmark::DoNotOptimize(core::proportion(example(), tables()));
    }
}
BENCHMARK(proportions_with_reasons)->Unit(benchmark::kMicrosecond);

void checks_with_messages(benchmark::State& state) {
    const core::Proportions proportions = *core::proportion(example(), tables());
    for ([[maybe_unused]] auto _ : state) {
        benchmark::DoNotOptimize(core::assess(example(), proportions, tables()));
    }
}
BENCHMARK(checks_with_messages)->Unit(benchmark::kMicrosecond);

void verdicts_of_a_mix(benchmark::State& state) {
    const core::Proportions proportions = *core::proportion(example(), tables());
    std::vector<core::Finding> verdicts;
    for ([[maybe_unused]] auto _ : state) {
        core::judge(example(), proportions, tables(), verdicts);
        benchmark::DoNotOptimize(verdicts.data());
    }
}
BENCHMARK(verdicts_of_a_mix)->Unit(benchmark::kMicrosecond);

void tables_of_a_system(benchmark::State& state) {
    for ([[maybe_unused]] auto _ : state) {
        benchmark::DoNotOptimize(reference::tables(core::UnitSystem::us));
    }
}
BENCHMARK(tables_of_a_system)->Unit(benchmark::kMicrosecond);

void json_of_a_mix(benchmark::State& state) {
    const core::Proportions proportions = *core::proportion(example(), tables());
    const auto checks = core::assess(example(), proportions, tables());
    const report::MixResult result{"proportion", example()->title, example()->requirements,
                                   proportions, checks};
    for ([[maybe_unused]] auto _ : state) {
        benchmark::DoNotOptimize(report::json(result));
    }
}
BENCHMARK(json_of_a_mix)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
