#pragma once

#include "../reading/refuse.hpp"
#include "mix_context.hpp"

#include <string>
#include <vector>

namespace boardmark::input {

/// The classes under a key, in the words of a code. Tells what is no class of it, what is given
/// twice and, where the code has one class of each category, what is one too many.
///
/// @param key as messages name it, "requirements.exposure"
std::vector<std::string> read_classes(const MixContext& context, const Reading& exposure,
                                      const std::string& key, const core::ClassNames& code);

/// The class of chloride content; empty where none is stated.
std::string read_chloride_class(const MixContext& context, const core::CodeTables& code,
                                bool reinforced);

/// Tells that a code is not known, with those that are.
void refuse_code(const MixContext& context, const Node& node, const Path& key,
                 const std::string& name);

} // namespace boardmark::input
