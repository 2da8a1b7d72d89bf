#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/input/fields/file_kind.hpp>

#include <string>

namespace boardmark::input {

/// A file of a kind to begin with: figures of which a sound first result follows, each key
/// explained, and the keys that may be added commented out beside them. Explanations are those of
/// the table of keys. Those of trial and wall go with that of the mix, saved beside them as mix.yaml.
std::string starter(FileKind kind, core::UnitSystem system);

} // namespace boardmark::input
