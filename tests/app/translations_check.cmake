# Fails where a string of the program has no translation: gathers the strings anew into a copy and
# looks for unfinished ones. English needs its plurals only.
set(plural)
if(language STREQUAL "en")
    set(plural -pluralonly)
endif()
set(copy ${scratch}/check_${language}.ts)
configure_file(${source}/translations/ullage_${language}.ts ${copy} COPYONLY)
execute_process(COMMAND ${lupdate} -silent ${plural} -I ${source} ${source}/app -ts ${copy}
    RESULT_VARIABLE failed OUTPUT_QUIET ERROR_VARIABLE said)
if(failed)
    message(FATAL_ERROR "lupdate: ${said}")
endif()
file(READ ${copy} text)
string(REGEX MATCHALL "<source>[^<]*</source>[^/]*<translation type=.unfinished" missing "${text}")
if(text MATCHES "type=.unfinished")
    message(FATAL_ERROR "Not translated (${language}): ${missing}")
endif()
