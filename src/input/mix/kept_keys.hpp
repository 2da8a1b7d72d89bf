#pragma once

#include "../gate/document.hpp"
#include "mix_tree.hpp"
#include "table_columns.hpp"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace boardmark::input {

/// The keys of a base mix, read once. A row changes those that its cells write, is read, and
/// leaves them as they were: what a row does not touch is not read again.
class KeptKeys {
public:
    /// All must outlive it; the base mix is sound.
    KeptKeys(const MixTree& base, std::span<const TableColumn> columns, const ReadOptions& options);
    KeptKeys(const KeptKeys&) = delete;
    KeptKeys& operator=(const KeptKeys&) = delete;

    /// The mix of a row, as if its keys were read as a file. Nothing where the row has to be read
    /// that way: it holds an error, or names a file.
    ///
    /// @param values  by column; as they were afterwards
    std::optional<MixReading> read(std::vector<std::optional<Node>>& values,
                                   const KeySource& source);

private:
    /// What is read again where a column writes.
    struct Part {
        Path path;                   ///< of a key that the base mix has; else of a section of it
        std::string_view added = {}; ///< the key that the section gets
        const Node* section = nullptr;
        std::size_t keys_of_section = 0; ///< of the base mix
        Diagnostics told = {};           ///< of it, as the base mix has it
        bool touched = false;
        std::optional<Reading> before = {};
    };

    /// Where a column writes.
    struct Place {
        Node* value = nullptr;       ///< in the base mix, where it has the key
        Node* section = nullptr;     ///< else the deepest that it has
        std::size_t names_above = 0; ///< of that
        std::size_t keys_of_section = 0;
        std::size_t part = 0;
    };

    class Change;

    void keep_materials();
    Place place_of(const TableColumn& column);
    std::size_t part_of(Part wanted);
    bool stands_alone(const std::vector<std::optional<Node>>& values) const;
    Diagnostics told_of_base() const;

    const ReadOptions& options_;
    std::span<const TableColumn> columns_;
    MixTree tree_;
    Files files_;
    Diagnostics told_ = {}; ///< of the base mix
    std::optional<Node> results_;
    std::optional<core::StrengthName> strength_class_;
    std::shared_ptr<const core::CodeTables> code_file_;
    std::vector<Part> parts_;
    std::vector<Place> places_;
    std::optional<Document> document_;
    std::optional<Materials> materials_; ///< that no column writes to
    std::optional<std::size_t> strength_; ///< the column of it, and of the code
    std::optional<std::size_t> code_;
    bool writes_curve_ = false;
};

} // namespace boardmark::input
