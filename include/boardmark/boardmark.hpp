#pragma once

// The library in one header: open a file, look whether it is sound, take what follows from it.

#include <boardmark/front/opened.hpp>
#include <boardmark/front/worked_mix.hpp>
#include <boardmark/front/worked_wall.hpp>
#include <boardmark/input/mix/read_mix.hpp>
#include <boardmark/input/reading/loader.hpp>

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

} // namespace boardmark
