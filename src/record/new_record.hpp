#pragma once

#include <string>

namespace boardmark::record {

/// A record that does not exist yet: it is made under a name of its own in the same folder and gets
/// its name when something is saved in it. So a first write that fails leaves no empty record.
class NewRecord {
public:
    explicit NewRecord(const std::string& path);
    /// Removes what did not get its name.
    ~NewRecord();
    NewRecord(const NewRecord&) = delete;
    NewRecord& operator=(const NewRecord&) = delete;

    /// Where it is made.
    const std::string& path() const { return own_name_; }

    /// Gives it the name; says no where somebody else has made a record of that name meanwhile.
    /// Throws Failure where the system refuses.
    bool place();

private:
    std::string path_;
    std::string own_name_;
};

} // namespace boardmark::record
