#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace boardmark::commands {

/// Reads a file line by line, however long it is, in memory of one line and a buffer.
class LineReader {
public:
    /// Throws Failure where the file cannot be opened.
    ///
    /// @param path  `-` is standard input
    /// @param goes_on  asked before each reading; may be empty
    explicit LineReader(std::string path, std::function<bool()> goes_on = {});
    ~LineReader();
    LineReader(const LineReader&) = delete;
    LineReader& operator=(const LineReader&) = delete;

    /// The next line without its end; of one that is longer than a limit, no more than a byte above
    /// it. False at the end of the file and after an interruption. Throws Failure where reading
    /// fails and where no end of the line comes.
    bool next(std::string& line, std::size_t longest);

    /// Lines that were given.
    std::size_t lines() const { return lines_; }

    /// The share of the file that was read, 0 where its size is not known.
    double share() const;

private:
    bool fill();

    std::string path_;
    std::function<bool()> goes_on_;
    int descriptor_;
    std::uint64_t size_ = 0;
    std::uint64_t read_ = 0;
    std::vector<char> buffer_;
    std::size_t at_ = 0;
    std::size_t end_ = 0;
    std::size_t lines_ = 0;
};

} // namespace boardmark::commands
