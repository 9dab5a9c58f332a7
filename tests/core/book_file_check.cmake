# Fails when the program opens files by other means than SQLite outside of the sources listed here.
# An open book must have no second handle: closing it would drop every lock that the process has on
# the book, and the next program to close it would delete the log under the open window.
# Usage: cmake -D ROOT=<source folder> -P <this file>
cmake_minimum_required(VERSION 3.25)

# Each was looked at: what it opens is no book that could be open in this process.
set(reviewed
    app/bench/run_file.cpp          # the run in hand, a file of its own
    app/cli/demo_book.cpp           # the demo's journal, in the resources
    app/cli/copy_commands.cpp       # copies
    app/cli/file_commands.cpp       # journals, after isNotTheBook(); the book that takeAway() holds
    app/cli/import_command.cpp      # journals
    app/cli/sheet_import.cpp        # a mapping, after isNotTheBook()
    app/cli/result_file.cpp         # results, after isNotTheBook()
    app/daybook/day_export.cpp      # exports, after isOpenHere()
    app/session/whole_file.cpp      # what is printed and exported, after isOpenHere()
    app/main.cpp                    # standard input and output
    app/session/seat.cpp            # lock files of its own
    app/session/seat.h              # the same
    app/session/starter.cpp         # journals: from the resources, or chosen after isOpenHere()
    app/window/cupboard_deeds.cpp   # calendars, after isOpenHere()
    app/window/journal_import.cpp   # journals
    app/window/sheet_importer.cpp   # spreadsheets, after isOpenHere()
    app/window/book_jobs.cpp        # exports, after isOpenHere()
    app/window/missing_book.cpp     # renames what is left of a missing book
    core/store/aside_copy.cpp       # books on read-only media, after isOpenHere()
    core/store/backup.cpp           # copies that no connection holds
    core/store/file_moves.cpp       # whole copies that no connection holds
    core/store/last_seen.cpp        # the heads of the chains, a file of its own
    core/store/lock_table.cpp       # the system's tables
    core/store/restore.cpp          # removes the copies it made itself
    core/store/scratch_file.cpp     # the same
    core/store/schema_steps.cpp     # the steps, in the resources
    core/store/sql_store.cpp        # takeAway()
    core/store/wreck.cpp            # a damaged book, after isOpenHere()
)

# Functions that take a name and open nothing.
set(harmless "QFile::(exists|encodeName|decodeName|link|symLinkTarget)\\(")
set(opening "(^|[^A-Za-z0-9_])(QFile|QSaveFile|QTemporaryFile|QLockFile|fopen|freopen|(i|o)?fstream|filebuf|copy_file|sendfile|mmap)([^A-Za-z0-9_]|$)|(^|[^A-Za-z0-9_>.:])::(open|openat|creat)[ ]*\\(")

set(faults 0)
set(seen 0)
file(GLOB_RECURSE files RELATIVE ${ROOT} ${ROOT}/core/*.h ${ROOT}/core/*.cpp ${ROOT}/app/*.h
    ${ROOT}/app/*.cpp)
foreach(file IN LISTS files)
    math(EXPR seen "${seen} + 1")
    if(file IN_LIST reviewed)
        continue()
    endif()
    file(STRINGS ${ROOT}/${file} lines REGEX "${opening}")
    foreach(line IN LISTS lines)
        if(line MATCHES "^[ \t]*(//|#[ \t]*include)")
            continue()
        endif()
        string(REGEX REPLACE "${harmless}" "" rest "${line}")
        if(rest MATCHES "${opening}")
            message(SEND_ERROR "${file} opens a file by itself: ${line}")
            math(EXPR faults "${faults} + 1")
        endif()
    endforeach()
endforeach()

if(seen EQUAL 0)
    message(FATAL_ERROR "no file found under ${ROOT}: the check looked at nothing")
endif()
if(faults EQUAL 0)
    message(STATUS "${seen} files looked at, books are opened through SQLite only")
endif()
