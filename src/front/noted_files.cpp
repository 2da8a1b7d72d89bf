#include <boardmark/front/noted_files.hpp>
#include <boardmark/text/sha256.hpp>

#include <algorithm>
#include <utility>
#include <variant>

namespace boardmark::front {

void add_once(const report::InputFile& file, report::InputFiles& inputs) {
    const bool there = std::ranges::any_of(inputs, [&](const report::InputFile& other) {
        return other.name == file.name && other.sha256 == file.sha256;
    });
    if (!there) {
        inputs.push_back(file);
    }
}

void note(const std::string& name, std::string_view bytes, report::InputFiles& inputs) {
    add_once({name, text::sha256(bytes)}, inputs);
}

input::Loader noting(input::Loader load, report::InputFiles& inputs) {
    return [load = std::move(load), &inputs](const std::string& name) {
        auto loaded = input::loaded_by(load, name);
        if (const auto* bytes = std::get_if<std::string>(&loaded)) {
            note(name, *bytes, inputs);
        }
        return loaded;
    };
}

} // namespace boardmark::front
