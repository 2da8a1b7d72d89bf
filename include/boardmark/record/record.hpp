#pragma once

#include <boardmark/core/strength/recorded.hpp>

#include <cstddef>
#include <string>
#include <vector>

/// The record of a project's trials and specimens: one SQLite database in one file.
namespace boardmark::record {

enum class Fault {
    missing,      ///< no such file
    not_a_record, ///< a file, but not one of these
    too_new,      ///< written by a later program
    damaged,      ///< the database contradicts itself
    cannot_read,  ///< the system refuses
    cannot_write, ///< the system refuses; nothing was saved
    busy,         ///< another program writes; nothing was saved
};

/// Thrown where a record cannot be read or written. `reason` follows the file's name in a message.
struct Failure {
    Fault fault;
    std::string reason;
};

/// All that a record holds. Rows in the order of their dates, then as they were saved.
struct Contents {
    std::vector<core::RecordedFile> files; ///< as they were saved
    std::vector<core::RecordedTrial> trials;
    std::vector<core::RecordedSpecimen> specimens;
};

/// Rows to be saved, all of one file. No name may stand twice.
struct Addition {
    std::string file; ///< its name
    std::string kind;
    core::UnitSystem reporting;
    std::vector<core::RecordedTrial> trials = {};
    std::vector<core::RecordedSpecimen> specimens = {};
};

/// A value that the record holds otherwise under the same name.
struct Conflict {
    bool in_trials;     ///< else in the specimens
    std::size_t row;    ///< of the addition
    std::string column; ///< its key, such as "slump_mm"
    core::RecordedValue recorded;
    core::RecordedValue given;
    std::string recorded_from; ///< the file
};

/// What became of an addition: saved whole, or, with conflicts, not at all.
struct Outcome {
    std::size_t saved = 0;
    std::size_t already_there = 0; ///< equal in every value
    std::vector<Conflict> conflicts = {};
};

/// The form of database that this program writes.
int newest_form();

/// Reads a record without changing its file. Throws Failure.
Contents read(const std::string& path);

/// Saves rows, all or none; makes the record where there is no file yet, and brings one of an
/// earlier form up to date. When this returns, the rows are on disk: they survive a loss of power.
/// Throws Failure; then nothing was saved. A row whose value is no number in the range of its
/// column, too long, or missing where one must stand, is such a failure.
Outcome add(const std::string& path, const Addition& addition);

} // namespace boardmark::record
