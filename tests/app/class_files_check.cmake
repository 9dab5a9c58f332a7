# Fails when what a class does is spread over files that are not named after it. Several small classes
# may share a file named after what they have in common; a class in more than one file may not.
# Usage: cmake -D ROOT=<source folder> -P <this file>
cmake_minimum_required(VERSION 3.25)

# Of each file's own making: words that only it translates.
set(local Words)

set(faults 0)
set(seen 0)
set(classes)
file(GLOB_RECURSE files RELATIVE ${ROOT} ${ROOT}/app/*.cpp ${ROOT}/core/*.cpp)
foreach(file IN LISTS files)
    math(EXPR seen "${seen} + 1")
    # Members are defined at the left edge, return type and all; calls are not.
    file(STRINGS ${ROOT}/${file} lines REGEX "^[A-Za-z][^(=]*[A-Z][A-Za-z0-9]*::~?[A-Za-z0-9]+[(]"
        ENCODING UTF-8)
    foreach(line IN LISTS lines)
        if(NOT line MATCHES "^([^(=]*[^A-Za-z0-9_])?([A-Z][A-Za-z0-9]*)::~?[A-Za-z0-9]+[(]")
            continue()
        endif()
        set(class ${CMAKE_MATCH_2})
        if(class IN_LIST local OR class MATCHES "^Q[A-Z]" OR line MATCHES "[;,]$")
            continue()
        endif()
        list(APPEND classes ${class})
        list(APPEND in_${class} ${file})
    endforeach()
endforeach()

list(REMOVE_DUPLICATES classes)
foreach(class IN LISTS classes)
    list(REMOVE_DUPLICATES in_${class})
    list(LENGTH in_${class} count)
    string(REGEX REPLACE "([a-z0-9])([A-Z])" "\\1_\\2" name ${class})
    string(TOLOWER ${name} name)
    foreach(file IN LISTS in_${class})
        get_filename_component(stem ${file} NAME_WE)
        if(count GREATER 1 AND NOT stem MATCHES "^${name}")
            message(SEND_ERROR "${file} holds part of ${class} under another name")
            math(EXPR faults "${faults} + 1")
        endif()
    endforeach()
endforeach()

if(seen EQUAL 0)
    message(FATAL_ERROR "no file found under ${ROOT}: the check looked at nothing")
endif()
if(faults EQUAL 0)
    list(LENGTH classes count)
    message(STATUS "${count} classes looked at, none is spread under other names")
endif()
