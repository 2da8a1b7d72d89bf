#pragma once

#include <string_view>

namespace boardmark::core {

/// Whether a cement's designation holds every word of one that a code accepts, in capitals or not:
/// "ASTM C150 V" holds "C150 V". As words_of() parts them, without an allocation.
bool holds_words(std::string_view designation, std::string_view accepted);

/// Whether a designation names a type of a cement standard that is known here, so that it can be
/// judged.
bool states_cement_type(std::string_view designation);

/// Whether it names several types, of which any may come: "C150 I or V". "I/II" and "IL(10)(MS)"
/// are one cement each.
bool names_alternatives(std::string_view designation);

/// Whether a fly ash is of class F, "ASTM C618 F"; one of either class, "C or F", may be the other.
bool is_class_f_ash(std::string_view designation);

} // namespace boardmark::core
