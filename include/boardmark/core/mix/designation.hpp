#pragma once

#include <string>
#include <string_view>
#include <vector>

/// What the designation of a standard says of a material, as far as the checks must know it. A
/// designation that is not known here says nothing, and nothing lenient follows from it.
namespace boardmark::core {

/// The words of a designation in capitals: "ASTM C595 IL(10)(MS)" → ASTM C595 IL 10 MS.
std::vector<std::string> words_of(std::string_view designation);

/// What a cement's standard says that it is.
enum class CementType {
    not_told,
    one_to_three,   ///< "ASTM C150 I", "I/II", "III", "Type II"; "CEM I 42.5 R"
    other_portland, ///< "ASTM C150 V", "II(MH)"; "CEM I 32.5 N-LH"
    limestone,      ///< "ASTM C595 IL(10)"; "CEM II/A-LL 42.5 N"
    blended,        ///< any other of ASTM C595; "CEM II/B-S 32.5 R" to "CEM V"
};

CementType cement_type(const std::string& standard);

/// Whether a designation names a standard by its number: "ASTM C989 100" names C989.
bool names_standard(const std::string& designation, std::string_view number);

/// What an admixture's standard says that it does.
struct AdmixtureType {
    std::string c494 = {};    ///< letters of ASTM C494 that it names, "AF"
    bool high_range = false;  ///< reduces water in the high range
    bool retards = false;     ///< delays setting
    bool accelerates = false; ///< hastens setting or hardening
};

/// Type letters of ASTM C494 (AASHTO M 194), types of ASTM C1017, names and tables of EN 934-2.
AdmixtureType admixture_type(const std::string& standard);

} // namespace boardmark::core
