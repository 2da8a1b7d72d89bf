#include "row_maker.hpp"

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/reference/tables.hpp>

#include <algorithm>
#include <variant>

namespace boardmark::commands {

namespace {

/// Whether two mixes are worked with the same tables.
bool shares_tables(const core::AnyCompleteMix& one, const core::AnyCompleteMix& other) {
    const core::Requirements& here = core::requirements_of(one);
    const core::Requirements& there = core::requirements_of(other);
    const auto* selected = std::get_if<core::CompleteMix>(&one);
    const auto* others = std::get_if<core::CompleteMix>(&other);
    return here.code == there.code && here.code_file == there.code_file &&
           core::system_of(one) == core::system_of(other) &&
           (!selected || !others || (*selected)->method == (*others)->method);
}

} // namespace

RowMaker::RowMaker(const report::RowWriter& writer, const core::Tables& tables,
                   const core::AnyCompleteMix& base)
    : writer_{writer}
    , tables_{tables}
    , base_{base} {}

const core::Tables& RowMaker::tables_of(const core::AnyCompleteMix& mix) {
    if (shares_tables(mix, base_)) {
        return tables_;
    }
    const auto found = std::ranges::find_if(
        others_, [&](const auto& other) { return shares_tables(mix, other->mix); });
    if (found != others_.end()) {
        return (*found)->tables;
    }
    constexpr std::size_t most_kept = 16; // a code read from a file is another in each row
    if (others_.size() == most_kept) {
        others_.clear();
    }
    others_.push_back(std::make_unique<const Other>(Other{mix, reference::tables_for(mix)}));
    return others_.back()->tables;
}

std::optional<core::Unresolved> RowMaker::work_out(const core::AnyCompleteMix& mix,
                                                   const core::Tables& tables) {
    if (const auto* selected = std::get_if<core::CompleteMix>(&mix)) {
        return core::figures(*selected, tables, proportions_);
    }
    auto accepted = core::accept(std::get<core::CompleteSubmittedMix>(mix), tables);
    if (!accepted) {
        return std::move(accepted).why();
    }
    proportions_ = *std::move(accepted);
    return std::nullopt;
}

MixRow RowMaker::row_of(const core::AnyCompleteMix& mix) {
    const std::string& title = core::title_of(mix);
    const core::Requirements& requirements = core::requirements_of(mix);
    const core::Tables& tables = tables_of(mix);
    if (auto why = work_out(mix, tables)) {
        std::string text = writer_.row(title, requirements, *why);
        return {std::move(text), ExitCode::unresolved, std::move(why)};
    }
    core::judge(mix, proportions_, tables, findings_);
    const bool fails = std::ranges::any_of(findings_, [](const core::Finding& finding) {
        return finding.verdict == core::Verdict::fails;
    });
    return {writer_.row({title, requirements, proportions_, findings_}),
            fails ? ExitCode::requirement_not_met : ExitCode::done};
}

} // namespace boardmark::commands
