#include "named_mix.hpp"

namespace boardmark::input {

std::optional<core::AnyCompleteMix> read_named_mix(const FileContext& context, Files& files,
                                                   ReadOptions options, const char* advice) {
    const Parsed* named = context.document.value({"mix"});
    if (!named) {
        return std::nullopt;
    }
    const Node& asked = *named->node;
    const std::string& name = named->text;
    const SourceText* source = fetch(asked, "mix", name, options.load, files, context.diagnostics);
    if (!source) {
        return std::nullopt;
    }
    if (const auto kind = other_kind(*source, FileKind::mix)) {
        context.refuse(asked, "mix: '" + name + "' is " + *kind, advice);
        return std::nullopt;
    }
    options.load = loader_of(options.load, name);
    options.needs_cylinders = true; // trials and walls work with them
    auto reading = read_mix(source->text(), source->file(), options);
    for (Diagnostic& diagnostic : reading.diagnostics) {
        context.diagnostics.push_back(std::move(diagnostic));
    }
    return std::move(reading.mix);
}

} // namespace boardmark::input
