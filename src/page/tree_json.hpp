#pragma once

#include <string>

namespace boardmark::page {

/// The tree of a YAML text as the strict gate reads it, each value with where it begins and ends,
/// counted in UTF-16 units as a browser counts: `null` where the gate refuses the text.
///
/// A node is {"at", "to", "kind", "text", "quoted"} and, of a list, "items", of a mapping,
/// "entries": pairs of nodes. The end of a list or mapping is where its last value ends; a closing
/// bracket stands behind it.
std::string tree_json(std::string text);

} // namespace boardmark::page
