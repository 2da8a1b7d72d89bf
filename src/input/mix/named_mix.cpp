#include "named_mix.hpp"

namespace boardmark::input {

std::optional<core::AnyCompleteMix> read_named_mix(const FileContext& context, Files& files,
                                                   ReadOptions options, const char* advice) {
    const Parsed* named = context.document.value({"mix"});
    return named
               ? read_named_mix(MixName{context, *named, "mix"}, files, std::move(options), advice)
               : std::nullopt;
}

std::optional<core::AnyCompleteMix> read_named_mix(const MixName& name, Files& files,
                                                   ReadOptions options, const char* advice) {
    const FileContext& context = name.context;
    const Node& asked = *name.named.node;
    const std::string& file = name.named.text;
    const SourceText* source =
        fetch(asked, name.key, file, options.load, files, context.diagnostics);
    if (!source) {
        return std::nullopt;
    }
    if (const auto kind = other_kind(*source, FileKind::mix)) {
        context.refuse(asked, std::string{name.key} + ": '" + file + "' is " + *kind, advice);
        return std::nullopt;
    }
    options.load = loader_of(options.load, file);
    auto reading = read_mix(source->text(), source->file(), options);
    for (Diagnostic& diagnostic : reading.diagnostics) {
        context.diagnostics.push_back(std::move(diagnostic));
    }
    return std::move(reading.mix);
}

} // namespace boardmark::input
