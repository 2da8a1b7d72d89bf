#pragma once

#include "flow.hpp"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <tuple>

namespace boardmark::report {

/// The places of a page to which its headlines lead: one for each check, none twice.
class Anchors {
public:
    /// @param flow must outlive the anchors
    explicit Anchors(const Flow& flow);

    const std::string& of(const CheckRow& row) const { return of_rows_.at(&row); }

    /// Of the first check of that name and verdict.
    std::optional<std::string> of(const std::string& scope, core::Verdict verdict,
                                  const std::string& id) const;

private:
    void add(const CheckRow& row, const std::string& scope);

    std::set<std::string> used_;
    std::map<const CheckRow*, std::string> of_rows_;
    std::map<std::tuple<std::string, core::Verdict, std::string>, std::string> first_;
};

} // namespace boardmark::report
