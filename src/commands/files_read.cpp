#include "files_read.hpp"

#include <boardmark/front/noted_files.hpp>

namespace boardmark::commands {

void add(const FilesRead& more, FilesRead& files_read) {
    files_read.paths.insert(files_read.paths.end(), more.paths.begin(), more.paths.end());
    for (const report::InputFile& input : more.inputs) {
        front::add_once(input, files_read.inputs);
    }
}

} // namespace boardmark::commands
