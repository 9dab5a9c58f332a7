# Fails when the window turns one unit into another by a figure of its own: minutes, hours and days
# are core/chemistry/time_units.h's, litres core/chemistry/quantities.h's.
# Usage: cmake -D ROOT=<source folder> -P <this file>
cmake_minimum_required(VERSION 3.25)

# What reads and writes units as people have them, and what deals with the clock's own fields.
set(wordsThem app/words/quantity_words.cpp app/words/number_text.cpp app/words/moment_words.cpp
    app/words/quantity_words.h app/words/units.h app/bench/bench_words.cpp)
set(clocks app/widgets/moment_field.cpp app/charts/chart.cpp app/bench/steady_time.cpp)
# Of a shape on the screen, which goes by capacity as it pleases.
set(draws app/widgets/bottle_shape.cpp)

set(figures "(60|24|1000|1'000|3600|3'600|86400|86'400)(\\.0)?")
set(faults 0)
set(seen 0)
file(GLOB_RECURSE files RELATIVE ${ROOT} ${ROOT}/app/*.h ${ROOT}/app/*.cpp)
foreach(file IN LISTS files)
    math(EXPR seen "${seen} + 1")
    if(file IN_LIST wordsThem OR file IN_LIST clocks OR file IN_LIST draws)
        continue()
    endif()
    file(STRINGS ${ROOT}/${file} lines REGEX "[*/] ?${figures}" ENCODING UTF-8)
    foreach(line IN LISTS lines)
        string(REGEX REPLACE "//.*" "" code "${line}")
        if(code MATCHES "[^/*][*/] ?${figures}([^0-9'.]|$)")
            string(STRIP "${code}" code)
            message(SEND_ERROR "${file} converts a unit by hand: ${code}")
            math(EXPR faults "${faults} + 1")
        endif()
    endforeach()
endforeach()

if(seen EQUAL 0)
    message(FATAL_ERROR "no file found under ${ROOT}: the check looked at nothing")
endif()
if(faults EQUAL 0)
    message(STATUS "${seen} files looked at, none converts a unit by hand")
endif()
