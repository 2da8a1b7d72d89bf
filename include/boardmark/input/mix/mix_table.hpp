#pragma once

#include <boardmark/input/mix/read_mix.hpp>

#include <cstddef>
#include <memory>
#include <optional>
#include <string>

namespace boardmark::input {

/// The most bytes that a row of a table of mixes may have.
constexpr std::size_t longest_table_row = std::size_t{64} * 1024;

/// A line of a table with its number in the file, from 0; a carriage return at its end is passed
/// over.
struct TableLine {
    std::string text;
    std::size_t number;
};

/// A mix file of which each row of a CSV table (RFC 4180, a row on one line) writes some values
/// anew. The header names keys of the mix file with their units, `requirements.strength [psi]`; a
/// cell holds what would stand in the file, without the unit where the header has it; an empty cell
/// leaves the value of the base mix.
class MixTable {
public:
    MixTable(MixTable&&) noexcept;
    MixTable& operator=(MixTable&&) noexcept;
    ~MixTable();

    /// The mix file as it is, which is sound by itself.
    const core::AnyCompleteMix& base() const;

private:
    struct Parts;
    explicit MixTable(std::unique_ptr<const Parts> parts);
    friend struct MixTableOpener;
    friend class MixRowReader;

    std::unique_ptr<const Parts> parts_;
};

/// Reads rows of a table one after the other. Each thread needs one of its own.
class MixRowReader {
public:
    /// The table must outlive the reader.
    explicit MixRowReader(const MixTable& table);
    MixRowReader(MixRowReader&&) noexcept;
    MixRowReader& operator=(MixRowReader&&) = delete;
    ~MixRowReader();

    /// The mix of a row, as if a file with its values was read.
    MixReading read(TableLine row);

private:
    struct Kept;
    std::unique_ptr<Kept> kept_;
};

/// A table that can be read, or why not: a fault of the base mix or of the header. Warnings of the
/// base mix may stand beside a table.
struct MixTableOpened {
    std::optional<MixTable> table;
    Diagnostics diagnostics;
};

/// A file's name, for diagnostics, and its text.
struct NamedSource {
    std::string name;
    std::string text;
};

/// @param base  the mix file
/// @param table  the table's name and its header, on its first line that is not blank
/// @param options  what is loaded is kept: each file is loaded once
MixTableOpened open_mix_table(NamedSource base, NamedSource table, std::size_t header_line,
                              ReadOptions options);

} // namespace boardmark::input
