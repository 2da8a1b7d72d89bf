#include "fault_list.hpp"

#include <array>
#include <cmath>
#include <cstdio>

namespace boardmark::core {
namespace {

std::string plainly(double number) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.6g", number);
    return text.data();
}

bool keeps(double number, const Bounds& bounds) {
    return std::isfinite(number) && number <= bounds.high &&
           (bounds.low_itself ? number >= bounds.low : number > bounds.low);
}

} // namespace

void FaultList::add(Field field, Problem problem, const std::string& what) const {
    std::string message = place_.empty() ? "" : place_ + ": ";
    message += name_of(field);
    faults_.push_back({field, problem, material_, message + " " + what});
}

void FaultList::missing(Field field, const std::string& why) const {
    add(field, Problem::missing, "is missing; " + why);
}

void FaultList::impossible(Field field, const std::string& why) const {
    add(field, Problem::impossible, why);
}

void FaultList::unknown(Field field, const std::string& word) const {
    add(field, Problem::unknown, "has '" + word + "', which the tables do not know");
}

bool FaultList::hold(Field field, double number, const Bounds& bounds) const {
    if (keeps(number, bounds)) {
        return true;
    }
    const std::string from = bounds.low_itself ? "from " : "above ";
    impossible(field, "is " + plainly(number) + "; it lies " + from + plainly(bounds.low) + " to " +
                          plainly(bounds.high));
    return false;
}

void FaultList::hold(Field field, const std::optional<double>& number, const Bounds& bounds) const {
    if (number) {
        hold(field, *number, bounds);
    }
}

} // namespace boardmark::core
