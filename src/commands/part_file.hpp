#pragma once

#include <string>

namespace boardmark::commands {

/// A file that is being written and has no name yet, in the folder where it will stand: it appears
/// whole or not at all, and any number of runs may write to the same name at once. Where the file
/// system keeps no file without a name it has one that begins with `.boardmark-`. Each function
/// throws Failure, which names the file that was asked for, where the system refuses.
class PartFile {
public:
    explicit PartFile(std::string path);
    /// Leaves nothing behind but what was placed.
    ~PartFile();
    PartFile(PartFile&& other) noexcept;
    PartFile(const PartFile&) = delete;
    PartFile& operator=(const PartFile&) = delete;

    void write(const std::string& bytes);

    /// Waits until all of it is on disk.
    void finish();

    /// Gives it the name. Without `overwrite` it never replaces a file, even one that came meanwhile.
    void place(bool overwrite);

    const std::string& path() const { return path_; }

private:
    std::string source() const;

    std::string path_;
    std::string own_name_; ///< empty while it has none
    int descriptor_ = -1;
};

/// Writes everything; says no, with errno, where that fails.
bool write_all(int descriptor, const std::string& bytes);

} // namespace boardmark::commands
