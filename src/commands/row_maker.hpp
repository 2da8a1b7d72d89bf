#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/finding.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/report/mix/row_report.hpp>

#include "exit_code.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::commands {

/// A mix as a row, and how the program ends for it alone.
struct MixRow {
    std::string text;
    ExitCode code;
    std::optional<core::Unresolved> unresolved = {};
};

/// Works mixes out and writes them as rows, again and again in the same memory.
class RowMaker {
public:
    /// All must outlive the maker.
    ///
    /// @param tables of `base`; a mix by another code or method is worked with its own
    RowMaker(const report::RowWriter& writer, const core::Tables& tables,
             const core::AnyCompleteMix& base);

    MixRow row_of(const core::AnyCompleteMix& mix);

private:
    /// A mix by another code or method than the base, and its tables.
    struct Other {
        core::AnyCompleteMix mix;
        core::Tables tables;
    };

    const core::Tables& tables_of(const core::AnyCompleteMix& mix);
    std::optional<core::Unresolved> work_out(const core::AnyCompleteMix& mix,
                                             const core::Tables& tables);

    const report::RowWriter& writer_;
    const core::Tables& tables_;
    const core::AnyCompleteMix& base_;
    std::vector<std::unique_ptr<const Other>> others_; ///< tables are made once for each code
    core::Proportions proportions_{};
    std::vector<core::Finding> findings_;
};

} // namespace boardmark::commands
