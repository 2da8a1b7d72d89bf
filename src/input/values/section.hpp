#pragma once

#include "../reading/file_context.hpp"

#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

/// The keys below one place of a file.
class Section {
public:
    Section(const FileContext& context, Path path)
        : context_(context)
        , path_(std::move(path)) {}

    const FileContext& context() const { return context_; }
    Path path(const std::string& key) const;
    Section below(const std::string& key) const { return {context_, path(key)}; }

    /// Whether the file has keys here.
    bool stands() const { return context_.holds_keys(path_); }
    std::vector<std::string> names() const { return context_.document.names(path_); }

    /// Whether the file has a key, or a fault about it has been told.
    bool has(const std::string& key) const { return context_.has(path(key)); }
    const Reading* find(const std::string& key) const { return context_.document.find(path(key)); }
    const Parsed* value(const std::string& key) const { return context_.document.value(path(key)); }
    std::optional<double> number(const std::string& key) const;
    std::optional<std::string> text(const std::string& key) const;
    bool flag(const std::string& key) const;

    /// A length in metres where the key has one.
    std::optional<double> metres(const std::string& key) const;

    /// A time in hours where the key has one.
    std::optional<double> hours(const std::string& key) const;

    int count(const std::string& key, int otherwise) const;

    /// Tells each key that is missing.
    void demand(std::initializer_list<const char*> keys) const;

    /// A fault of a key's value; the message begins with the key's place.
    void refuse(const std::string& key, const std::string& message, std::string advice) const;

private:
    const FileContext& context_;
    Path path_;
};

} // namespace boardmark::input
