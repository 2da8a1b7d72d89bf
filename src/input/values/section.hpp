#pragma once

#include "../reading/file_context.hpp"

#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

/// The keys below one place of a file. As a path it refers to names that the caller keeps.
class Section {
public:
    Section(const FileContext& context, const Path& path)
        : context_(context)
        , path_(path) {}

    const FileContext& context() const { return context_; }
    Path path(std::string_view key) const { return path_.below(key); }
    Section below(std::string_view key) const { return {context_, path(key)}; }

    /// Whether the file has keys here.
    bool stands() const { return context_.holds_keys(path_); }
    std::vector<std::string_view> names() const { return context_.document.names(path_); }

    /// Whether the file has a key, or a fault about it has been told.
    bool has(std::string_view key) const { return context_.has(path(key)); }
    const Reading* find(std::string_view key) const { return context_.document.find(path(key)); }
    const Parsed* value(std::string_view key) const { return context_.document.value(path(key)); }
    std::optional<double> number(std::string_view key) const;
    std::optional<std::string> text(std::string_view key) const;
    bool flag(std::string_view key) const;

    /// A length in metres where the key has one.
    std::optional<double> metres(std::string_view key) const;

    /// A time in hours where the key has one.
    std::optional<double> hours(std::string_view key) const;

    int count(std::string_view key, int otherwise) const;

    /// Tells each key that is missing.
    void demand(std::initializer_list<const char*> keys) const;

    /// A fault of a key's value; the message begins with the key's place.
    void refuse(std::string_view key, const std::string& message, std::string advice) const;

private:
    const FileContext& context_;
    Path path_;
};

} // namespace boardmark::input
