#include "labels.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <string_view>

namespace boardmark::commands {
namespace {

/// Labels that stand several times get a number: "wall (1)", "wall (2)".
std::vector<std::string> numbered(const std::vector<std::string>& labels) {
    std::vector<std::string> result;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const auto here = labels.begin() + static_cast<std::ptrdiff_t>(i);
        const auto before = std::count(labels.begin(), here, labels[i]);
        const bool once = std::ranges::count(labels, labels[i]) == 1;
        result.push_back(once ? labels[i] : fmt::format("{} ({})", labels[i], before + 1));
    }
    return result;
}

} // namespace

std::vector<std::string> labels_of(const std::vector<std::string>& files) {
    std::vector<std::string> labels;
    for (const std::string& file : files) {
        std::string label = file.substr(file.rfind('/') + 1);
        if (label.ends_with(".yaml")) {
            label.resize(label.size() - std::string_view{".yaml"}.size());
        }
        labels.push_back(label == "-" ? "standard input" : std::move(label));
    }
    const std::set<std::string> different(labels.begin(), labels.end());
    const std::set<std::string> different_files(files.begin(), files.end());
    return numbered(different.size() == different_files.size() ? labels : files);
}

} // namespace boardmark::commands
