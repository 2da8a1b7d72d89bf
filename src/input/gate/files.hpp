#pragma once

#include <boardmark/input/fields/file_kind.hpp>
#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/input/reading/loader.hpp>

#include "node.hpp"
#include "source_text.hpp"

#include <deque>
#include <optional>
#include <string>

namespace boardmark::input {

/// The files of one reading; nodes point into them.
class Files {
public:
    const SourceText& add(std::string name, std::string text);

    /// Puts diagnostics in the order of the files, each in the order of its lines.
    void sort(Diagnostics& diagnostics) const;

    /// Where a file stands among them; behind all, where it is none of them.
    std::size_t order_of(const std::string& name) const;

private:
    std::deque<SourceText> files_;
};

/// The keys of a file whose text passed the gate; its version has been judged. Nothing where the
/// text cannot be read at all.
std::optional<Node> read_tree(const SourceText& source, Diagnostics& diagnostics);

/// Whether the keys of a file are those of another kind than expected; then one diagnostic says
/// which command reads it.
bool refuse_other_kind(const Node& root, FileKind expected, Diagnostics& diagnostics);

/// The kind of a file in words where it is not the one expected ("a trial file"); else nothing. A
/// text that cannot be read is of no other kind.
std::optional<std::string> other_kind(const SourceText& source, FileKind expected);

/// The file that a value names, loaded. Nothing where it may not be named or cannot be read; then a
/// diagnostic at the value tells why. `key` is the value's key in the words of the message.
const SourceText* fetch(const Node& asked, const std::string& key, const std::string& name,
                        const Loader& load, Files& files, Diagnostics& diagnostics);

/// Gets what a named file names in turn: its names are relative to that file.
Loader loader_of(const Loader& load, const std::string& named);

/// How messages name a file that another file names: with the folder of that other file.
std::string shown_beside(const std::string& file, const std::string& name);

} // namespace boardmark::input
