#include "encoding.hpp"

#include <boardmark/text/utf8.hpp>

#include "tree_builder.hpp"

namespace boardmark::input {

void demand_text(const SourceText& source) {
    const std::string& text = source.text();
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
        throw Refused{{}, "the file is UTF-16 or UTF-32, not UTF-8", "save it as UTF-8"};
    }
    if (text.find('\n') == std::string::npos && text.find('\r') != std::string::npos) {
        throw Refused{{},
                      "the lines end with a lone carriage return",
                      "save the file with the line ends of Unix or Windows"};
    }
    if (const auto byte = text::first_invalid_byte(text)) {
        throw Refused{
            {source.spot_of(*byte)}, "the text is not UTF-8 here", "save the file as UTF-8"};
    }
    if (const auto byte = text::first_control_character(text)) {
        throw Refused{{source.spot_of(*byte)}, "there is a control character here", "delete it"};
    }
}

} // namespace boardmark::input
