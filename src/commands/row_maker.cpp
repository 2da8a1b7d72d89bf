#include "row_maker.hpp"

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/method/proportion.hpp>

#include <algorithm>
#include <variant>

namespace boardmark::commands {

RowMaker::RowMaker(const report::RowWriter& writer, const core::Tables& tables)
    : writer_{writer}
    , tables_{tables} {}

std::optional<core::Unresolved> RowMaker::work_out(const core::AnyCompleteMix& mix) {
    if (const auto* selected = std::get_if<core::CompleteMix>(&mix)) {
        return core::figures(*selected, tables_, proportions_);
    }
    auto accepted = core::accept(std::get<core::CompleteSubmittedMix>(mix), tables_);
    if (!accepted) {
        return std::move(accepted).why();
    }
    proportions_ = *std::move(accepted);
    return std::nullopt;
}

MixRow RowMaker::row_of(const core::AnyCompleteMix& mix) {
    const std::string& title = core::title_of(mix);
    const core::Requirements& requirements = core::requirements_of(mix);
    if (auto why = work_out(mix)) {
        std::string text = writer_.row(title, requirements, *why);
        return {std::move(text), ExitCode::unresolved, std::move(why)};
    }
    core::judge(mix, proportions_, tables_, findings_);
    const bool fails = std::ranges::any_of(findings_, [](const core::Finding& finding) {
        return finding.verdict == core::Verdict::fails;
    });
    return {writer_.row({title, requirements, proportions_, findings_}),
            fails ? ExitCode::requirement_not_met : ExitCode::done};
}

} // namespace boardmark::commands
