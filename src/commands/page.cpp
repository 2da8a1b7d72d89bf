#include "carried_page.hpp"
#include "command.hpp"
#include "delivery.hpp"

namespace boardmark::commands {
namespace of_page {
namespace {

constexpr std::string_view examples[] = {
    "boardmark page --out boardmark.html",
    "boardmark page > boardmark.html",
};

Failure carries_none() {
    return {ExitCode::output_failed,
            "boardmark: error: the page was not written: this program was built without it\n"
            "           'bash examples/page', in the folder of the sources, makes the page and a\n"
            "           program that carries it\n"};
}

ExitCode run(const Arguments& arguments) {
    const std::string_view page = carried_page();
    if (page.empty()) {
        throw carries_none();
    }
    write_only_form(std::string{page}, arguments);
    return ExitCode::done;
}

} // namespace
} // namespace of_page

const Command page_command = without_file(
    {.name = "page",
     .summary = "the engine as one HTML file for phone or desk, which needs no network",
     .usage = "boardmark page [OPTIONS]",
     .options = {},
     .examples = of_page::examples,
     .run = of_page::run,
     .notes =
         "The page has a form for mix, batch, trial and wall, opens and saves their files, and\n"
         "gives the figures of this program. It is carried where 'bash examples/page' built\n"
         "the program; browsers from 2022 on open it."});

} // namespace boardmark::commands
