#include "anchors.hpp"

#include <boardmark/text/utf8.hpp>

namespace boardmark::report {
namespace {

bool is_plain(char letter) {
    return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
           (letter >= '0' && letter <= '9') || letter == '.' || letter == '_';
}

/// A name as a part of an address: what a material is called may hold anything.
std::string plain(std::string name) {
    for (char& letter : name) {
        letter = is_plain(letter) ? letter : '-';
    }
    return name;
}

} // namespace

Anchors::Anchors(const Flow& flow) {
    for (const Block& block : flow.blocks()) {
        if (const auto* list = std::get_if<CheckList>(&block)) {
            for (const CheckRow& row : list->rows) {
                add(row, list->scope);
            }
        }
    }
}

void Anchors::add(const CheckRow& row, const std::string& scope) {
    const std::string wanted = plain((scope.empty() ? "check-" : "check-" + scope + "-") + row.id);
    std::string anchor = wanted;
    for (int number = 2; !used_.insert(anchor).second; ++number) {
        anchor = wanted + "-" + std::to_string(number);
    }
    of_rows_[&row] = anchor;
    first_.try_emplace({scope, row.verdict, row.id}, anchor);
}

std::optional<std::string> Anchors::of(const std::string& scope, core::Verdict verdict,
                                       const std::string& id) const {
    const auto found = first_.find({scope, verdict, text::printable(id)});
    return found == first_.end() ? std::nullopt : std::optional{found->second};
}

} // namespace boardmark::report
