# Included by app/CMakeLists.txt, because what makes a file must stand in the folder of its target.
# English has a file too: without it a reader gets "bottle(s)".
find_package(Qt6 6.4 REQUIRED COMPONENTS LinguistTools)
file(MAKE_DIRECTORY ${CMAKE_BINARY_DIR}/i18n)
set(compiled)
foreach(language de en)
    set(qm ${CMAKE_BINARY_DIR}/i18n/ullage_${language}.qm)
    set(ts ${CMAKE_SOURCE_DIR}/translations/ullage_${language}.ts)
    add_custom_command(OUTPUT ${qm}
        COMMAND Qt6::lrelease -silent ${ts} -qm ${qm} DEPENDS ${ts} VERBATIM)
    list(APPEND compiled ${qm})
endforeach()

add_custom_target(ullage_translations DEPENDS ${compiled})

# The compiled files lie in the sources of one target only: in a folder other than this one the
# rule that makes them is not known, so that such a target takes them when they are there.
function(ullage_add_translations target)
    set_source_files_properties(${ULLAGE_COMPILED_TRANSLATIONS} PROPERTIES GENERATED TRUE)
    add_dependencies(${target} ullage_translations)
    qt_add_resources(${target} ${target}_i18n PREFIX /i18n BASE ${CMAKE_BINARY_DIR}/i18n
        FILES ${ULLAGE_COMPILED_TRANSLATIONS})
endfunction()
set(ULLAGE_COMPILED_TRANSLATIONS ${compiled} CACHE INTERNAL "what lrelease makes")
ullage_add_translations(ullage)

add_custom_target(update_translations
    COMMAND Qt6::lupdate -I ${CMAKE_SOURCE_DIR} -pluralonly -locations none ${CMAKE_SOURCE_DIR}/app
            -ts ${CMAKE_SOURCE_DIR}/translations/ullage_en.ts
    COMMAND Qt6::lupdate -I ${CMAKE_SOURCE_DIR} -locations none ${CMAKE_SOURCE_DIR}/app
            -ts ${CMAKE_SOURCE_DIR}/translations/ullage_de.ts
    VERBATIM)

if(ULLAGE_TESTS)
    foreach(language de en)
        add_test(NAME Translations.${language}IsComplete
            COMMAND ${CMAKE_COMMAND}
                -D lupdate=$<TARGET_FILE:Qt6::lupdate> -D source=${CMAKE_SOURCE_DIR}
                -D language=${language} -D scratch=${CMAKE_BINARY_DIR}/i18n
                -P ${CMAKE_SOURCE_DIR}/tests/app/translations_check.cmake)
    endforeach()
endif()
