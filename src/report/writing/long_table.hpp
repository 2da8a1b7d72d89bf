#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {

/// Results of many kinds for a spreadsheet (RFC 4180): a row for each figure, its unit beside it.
/// Every pressure, force and rate of rise carries form_caution() in its own row, so that no filter
/// or sort of the rows parts them.
class LongTable {
public:
    explicit LongTable(core::UnitSystem system)
        : system_(system) {}

    /// The following rows belong to it.
    void section(std::string name) { section_ = std::move(name); }

    /// The following rows are about it.
    void subject(std::string name) { subject_ = std::move(name); }

    /// The following rows are about one of several parts of it, counted from 1: "wall, row 2". What
    /// belongs together keeps one name when the rows are sorted.
    void subject(const std::string& name, std::string_view part, std::size_t number);

    /// A figure in the reader's units; an absent one leaves its cell empty.
    void add(std::string_view quantity, core::Measure measure, std::optional<double> value,
             const std::string& status = "", const std::string& note = "");

    /// A number in a unit that no measure has: money of a currency.
    void add_in(std::string_view quantity, double value, const std::string& unit,
                const std::string& status = "", const std::string& note = "");

    void add_count(std::string_view quantity, int count, const std::string& note = "");

    /// What has no figure.
    void add_words(std::string_view quantity, const std::string& status, const std::string& note);

    /// Value and limits of each check, its verdict beside them, under the check's id.
    void add(const std::vector<core::Check>& checks);

    /// A sentence in each row.
    void add(std::string_view quantity, const std::vector<core::Phrase>& phrases);

    core::UnitSystem system() const { return system_; }

    /// The rows with their header.
    std::string text() const;

private:
    void row(std::string_view quantity, const std::string& value, const std::string& unit,
             const std::string& status, const std::string& note);

    core::UnitSystem system_;
    std::string section_;
    std::string subject_;
    std::string rows_;
};

/// Whether a figure tells how fresh concrete presses on forms and ties, or how fast it may rise.
bool presses_on_forms(core::Measure measure);

/// The caution that stands beside every pressure and tie figure, and what else is to be noted.
std::string with_form_caution(const std::string& note = "");

} // namespace boardmark::report
