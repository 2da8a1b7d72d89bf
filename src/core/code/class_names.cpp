#include <boardmark/core/code/class_names.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include <algorithm>

namespace boardmark::core {

const NamedClass* ClassNames::find(std::string_view name) const {
    const auto found = std::find_if(classes.begin(), classes.end(),
                                    [&](const NamedClass& known) { return known.name == name; });
    return found == classes.end() ? nullptr : &*found;
}

ClassNames class_names(const CodeTables& code) {
    ClassNames names{
        .code = code.name, .classes = {}, .several_of_category = code.several_of_category};
    for (const ExposureClass& known : code.classes) {
        names.classes.push_back({known.name, known.category});
    }
    return names;
}

} // namespace boardmark::core
