#pragma once

#include <boardmark/input/fields/file_kind.hpp>

#include "../gate/files.hpp"
#include "file_context.hpp"

#include <span>
#include <string>
#include <utility>

namespace boardmark::input {

/// A kind of file and its keys.
struct FileFormat {
    FileKind kind;
    std::span<const Field> fields;
};

/// Takes one file through the gate and its fields to a record, all faults in the order of the file.
/// With an error there is no record.
///
/// @param build makes the record of a `FileContext` and the `Files`, which it may add to
template <class Reading, class Build>
Reading read_record(std::string text, std::string file, const FileFormat& format, Build build) {
    Reading reading;
    Diagnostics& diagnostics = reading.diagnostics;
    Files files;
    const SourceText& source = files.add(std::move(file), std::move(text));
    const auto root = read_tree(source, diagnostics);
    if (!root || refuse_other_kind(*root, format.kind, diagnostics)) {
        return reading;
    }
    const Document document{*root, format.fields, diagnostics};
    auto record = build({*root, document, format.fields, diagnostics}, files);
    files.sort(diagnostics);
    if (!has_errors(diagnostics)) {
        reading.record = std::move(record);
    }
    return reading;
}

} // namespace boardmark::input
