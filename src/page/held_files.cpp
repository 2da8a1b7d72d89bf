#include "held_files.hpp"

#include <boardmark/front/input_file.hpp>

#include <map>
#include <utility>

// The page has no disk: what the front room reads from files comes from those that are open in it.

namespace boardmark::page {
namespace {

std::map<std::string, std::string>& files() {
    static std::map<std::string, std::string> held;
    return held;
}

} // namespace

void hold(const std::string& name, std::string bytes) {
    files()[name] = std::move(bytes);
}

void hold_nothing() {
    files().clear();
}

const std::string& held(const std::string& name) {
    static const std::string none;
    const auto found = files().find(name);
    return found == files().end() ? none : found->second;
}

} // namespace boardmark::page

namespace boardmark::front {

bool is_there(const std::string& path) {
    return page::files().contains(path);
}

std::variant<std::string, ReadFailure> read_bytes(const std::string& path,
                                                  std::size_t largest_accepted) {
    const auto found = page::files().find(path);
    if (found == page::files().end()) {
        return ReadFailure{"it is not open in this page"};
    }
    return found->second.substr(0, largest_accepted + 1);
}

input::Loader loader_beside(const std::string&, std::function<void(const std::string&)> on_read) {
    return [on_read = std::move(on_read)](
               const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        if (on_read) {
            on_read(name);
        }
        auto bytes = read_bytes(name, largest_yaml_file);
        if (const auto* failure = std::get_if<ReadFailure>(&bytes)) {
            return input::LoadFailure{failure->reason, "open that file in the page as well"};
        }
        return std::get<std::string>(std::move(bytes));
    };
}

} // namespace boardmark::front
