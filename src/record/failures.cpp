#include "database.hpp"

#include <sqlite3.h>

namespace boardmark::record {
namespace {

/// Faults of the file that reading and writing share; `otherwise` stands for all else.
Failure failure(const SQLite::Exception& fault, Fault otherwise) {
    switch (fault.getErrorCode()) {
    case SQLITE_NOTADB:
        return {Fault::not_a_record, "it is not a record"};
    case SQLITE_CORRUPT:
    case SQLITE_ERROR: // the tables are not what the header promises
    case SQLITE_MISMATCH:
        return {Fault::damaged, "it is damaged; go back to a copy"};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {Fault::busy, "another program is writing to it; try again"};
    case SQLITE_FULL:
        return {otherwise, "the disk is full"};
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return {otherwise, "it may not be written to"};
    case SQLITE_CANTOPEN:
        return {otherwise, "it cannot be opened"};
    default:
        return {otherwise, fault.getErrorStr()};
    }
}

} // namespace

Failure failed_reading(const SQLite::Exception& fault) {
    // A write was interrupted, and undoing it must write to the file.
    if (fault.getExtendedErrorCode() == SQLITE_READONLY_ROLLBACK) {
        return {Fault::cannot_read,
                "a write to it was interrupted and must be undone, but it may not be written to"};
    }
    return failure(fault, Fault::cannot_read);
}

Failure failed_writing(const SQLite::Exception& fault) {
    return failure(fault, Fault::cannot_write);
}

} // namespace boardmark::record
