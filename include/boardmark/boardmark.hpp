#pragma once

// The library in one header: open a file, look whether it is sound, take what follows from it.

#include <boardmark/front/opened.hpp>
#include <boardmark/front/worked_mix.hpp>
#include <boardmark/front/worked_results.hpp>
#include <boardmark/front/worked_trial.hpp>
#include <boardmark/front/worked_wall.hpp>
#include <boardmark/input/mix/read_mix.hpp>
#include <boardmark/input/reading/loader.hpp>

#include <optional>
#include <string>

namespace boardmark {

using input::Purpose;

/// Opens a mix file, with the files that it names, and works it through: proportions selected or
/// submitted, and every check.
///
/// @param path `-` is standard input
/// @param purpose what must be there: `batch` demands the moistures of the aggregates too
Opened<WorkedMix> open(const std::string& path, Purpose purpose = Purpose::check);

/// The same of a text. Without a loader it can name no other file.
///
/// @param name of the text, for its faults
Opened<WorkedMix> read(std::string text, std::string name, Purpose purpose = Purpose::check,
                       input::Loader load = {});

/// The same of a mix that was built in memory: its faults name the members of the structs.
Opened<WorkedMix> work(core::AnyMix mix);

/// Opens a wall file with its mix file and plans the walls.
Opened<WorkedWall> open_wall(const std::string& path);

Opened<WorkedWall> read_wall(std::string text, std::string name, input::Loader load);

/// Opens a trial file with its mix file and finds the yield and the next trial.
///
/// @param today days since 1970-01-01; where given, a trial of a later day is a fault
Opened<WorkedTrial> open_trial(const std::string& path, std::optional<int> today = {});

Opened<WorkedTrial> read_trial(std::string text, std::string name, input::Loader load,
                               std::optional<int> today = {});

/// Opens a file of strength results, with the specimens that it names, and judges them.
///
/// @param today days since 1970-01-01: what is not crushed by then is still due
Opened<WorkedResults> open_results(const std::string& path, int today);

Opened<WorkedResults> read_results(std::string text, std::string name, input::Loader load,
                                   int today);

} // namespace boardmark
