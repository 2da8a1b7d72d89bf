#include "improbable_moistures.hpp"

#include <boardmark/text/utf8.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::input {
namespace {

using core::Role;

// Moistures of stockpiles, total, in % of oven-dry mass; common practice, no source.
constexpr Range moisture_of_sand{.low = 1, .high = 10};
constexpr double highest_of_stone = 4;
constexpr double highest_free_of_stone = 2; // of stone that takes up much itself
constexpr double wet_sand_free = 2;         // sand that nobody calls dry
constexpr double likely_a_fraction = 0.1;

constexpr const char* measure_again = "measure it again; it is used as written";

double total_of(const StatedMoisture& one) {
    return *one.aggregate->aggregate.moisture_percent;
}

double absorption_of(const StatedMoisture& one) {
    return one.aggregate->aggregate.absorption_percent.value_or(0);
}

bool has_role(const StatedMoisture& one, Role role) {
    return core::role_of(one.aggregate->kind) == role;
}

std::string name_of(const StatedMoisture& one) {
    return text::printable(one.aggregate->name);
}

class MoistureSlips {
public:
    MoistureSlips(const FileContext& context, const std::vector<StatedMoisture>& stated)
        : context_(context) {
        for (const StatedMoisture& one : stated) {
            if (has_role(one, Role::fine)) {
                wettest_ = !wettest_ || total_of(one) > total_of(*wettest_) ? &one : wettest_;
            }
        }
    }

    void judge(const StatedMoisture& one) const {
        if (one.percent > 0 && one.percent < likely_a_fraction) {
            judge_fraction(one);
        } else if (has_role(one, Role::fine)) {
            judge_sand(one);
        } else {
            judge_stone(one);
        }
    }

private:
    /// A figure of a file is asked back for it where it is read.
    void judge_fraction(const StatedMoisture& one) const {
        if (!one.node) {
            ask(one, "is unusually small",
                fmt::format("{:.6g} %, perhaps? a percentage is read, not a fraction",
                            100 * one.percent));
        }
    }

    void judge_sand(const StatedMoisture& one) const {
        const double total = total_of(one);
        if (total < moisture_of_sand.low || total > moisture_of_sand.high) {
            const bool low = total < moisture_of_sand.low;
            ask(one,
                fmt::format("is unusual for fine aggregate, rarely {} {:.0f} %",
                            low ? "below" : "above",
                            low ? moisture_of_sand.low : moisture_of_sand.high),
                measure_again);
        }
    }

    void judge_stone(const StatedMoisture& one) const {
        const double total = total_of(one);
        const double highest =
            std::max(highest_of_stone, absorption_of(one) + highest_free_of_stone);
        const bool beside_wet_sand =
            wettest_ && total_of(*wettest_) - absorption_of(*wettest_) > wet_sand_free;
        if (wettest_ && total > total_of(*wettest_)) {
            ask(one,
                fmt::format("is more than {} carries, {:.6g} %", name_of(*wettest_),
                            total_of(*wettest_)),
                "exchanged, perhaps? sand holds more water than stone; both are used as written");
        } else if (total > highest) {
            ask(one, fmt::format("is unusual for coarse aggregate, rarely above {:.3g} %", highest),
                measure_again);
        } else if (beside_wet_sand && total < absorption_of(one) / 2) {
            ask(one,
                fmt::format("is less than half of its absorption, {:.6g} %, beside wet {} at "
                            "{:.6g} %",
                            absorption_of(one), name_of(*wettest_), total_of(*wettest_)),
                measure_again);
        }
    }

    void ask(const StatedMoisture& one, const std::string& what, std::string advice) const {
        const std::string message = one.told + " " + what;
        if (one.node) {
            context_.ask_back(*one.node, message, std::move(advice));
        } else {
            context_.diagnostics.push_back({.file = context_.root.source->file(),
                                            .severity = Severity::warning,
                                            .message = message,
                                            .excerpt = {},
                                            .advice = std::move(advice)});
        }
    }

    const FileContext& context_;
    const StatedMoisture* wettest_ = nullptr; ///< of the sands
};

} // namespace

void ask_back_moistures(const FileContext& context, const std::vector<StatedMoisture>& stated) {
    const MoistureSlips slips{context, stated};
    for (const StatedMoisture& one : stated) {
        slips.judge(one);
    }
}

} // namespace boardmark::input
