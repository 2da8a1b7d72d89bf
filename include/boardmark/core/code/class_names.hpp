#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

struct CodeTables;

/// An exposure class by name, without what it asks.
struct NamedClass {
    std::string name;     ///< "F2"
    std::size_t category; ///< its place among the code's categories
};

/// The exposure classes that a code knows: enough to hold against it what a file states.
struct ClassNames {
    std::string code; ///< "ACI 318-19"
    std::vector<NamedClass> classes;
    bool several_of_category = false; ///< whether a mix may have more classes of one category

    /// The class of that name, or nullptr.
    const NamedClass* find(std::string_view name) const;
};

/// Those of tables that are read already.
ClassNames class_names(const CodeTables& code);

} // namespace boardmark::core
