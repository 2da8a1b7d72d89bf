#pragma once

#include <boardmark/core/wall/wall_plan.hpp>
#include <boardmark/input/wall/read_wall.hpp>
#include <boardmark/report/wall/wall_report.hpp>

#include <string>

namespace boardmark {

/// A wall file and what follows from it and from its mix.
class WorkedWall {
public:
    WorkedWall(input::WallRecord record, core::WallPlan plan, report::InputFiles inputs = {})
        : record_{std::move(record)}
        , plan_{std::move(plan)}
        , inputs_{std::move(inputs)} {}

    const core::Wall& wall() const { return record_.wall; }
    const core::WallPlan& plan() const { return plan_; }

    /// The reports that the program writes, in the units of the wall file.
    std::string text(bool explain = false) const;
    std::string json() const; ///< SI, unrounded
    std::string csv() const;
    std::string html() const; ///< one page that needs no network

private:
    report::WallResult result() const { return {record_.wall, plan_, record_.mix_file, inputs_}; }

    input::WallRecord record_;
    core::WallPlan plan_;
    report::InputFiles inputs_;
};

} // namespace boardmark
