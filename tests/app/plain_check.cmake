# Fails when the window shows text in a way that guesses whether it is markup: what a person typed
# must be shown as it was typed (app/widgets/plain_text.h).
# Usage: cmake -D ROOT=<source folder> -P <this file>
cmake_minimum_required(VERSION 3.25)

# The helper itself, and the only places that make markup; each escapes what was typed.
set(helper app/widgets/plain_text.h app/widgets/plain_text.cpp app/widgets/plain_label.h
    app/widgets/plain_label.cpp)
set(makesMarkup app/widgets/explanation_view.h app/widgets/explanation_view.cpp app/bench/tank_side.cpp)
# Message boxes and questions: told there that their texts are plain.
set(asks app/widgets/prompts.cpp)

set(faults 0)
set(seen 0)
# Counts a fault if `pattern` is found in the text of `file`.
macro(forbid pattern instead)
    string(REGEX MATCH "${pattern}" found "${text}")
    if(found)
        message(SEND_ERROR "${file}: ${found} guesses at markup; use ${instead}")
        math(EXPR faults "${faults} + 1")
    endif()
endmacro()

file(GLOB_RECURSE files RELATIVE ${ROOT} ${ROOT}/app/*.h ${ROOT}/app/*.cpp)
foreach(file IN LISTS files)
    math(EXPR seen "${seen} + 1")
    if(file IN_LIST helper)
        continue()
    endif()
    file(READ ${ROOT}/${file} text)
    string(REPLACE ";" ":" text "${text}") # a list separator to CMake
    forbid("new QLabel" "PlainLabel")
    forbid("<QLabel>[(]" "PlainLabel")
    forbid("public QLabel" "PlainLabel")
    forbid("[^a-zA-Z]QLabel [a-zA-Z_]+[({]" "PlainLabel")
    forbid("[^n]setToolTip[(]" "setPlainToolTip()")
    forbid("QToolTip::" "showPlainToolTip()")
    forbid("elidedText[(]" "oneLine()")
    forbid("set(WhatsThis|StatusTip)[(]" "a PlainLabel")
    forbid("QStaticText|QErrorMessage|QGraphicsTextItem" "drawText() or a PlainLabel")
    string(REGEX MATCHALL "ToolTipRole" roles "${text}")
    string(REGEX MATCHALL "plainToolTip\\(" plains "${text}")
    list(LENGTH roles roles)
    list(LENGTH plains plains)
    if(plains LESS roles)
        message(SEND_ERROR "${file}: a ToolTipRole guesses at markup; use plainToolTip()")
        math(EXPR faults "${faults} + 1")
    endif()
    if(NOT file IN_LIST makesMarkup)
        forbid("[sS]etHtml[(]|insertHtml[(]|fromHtml[(]|Qt::RichText|Qt::AutoText|Markdown" "a PlainLabel")
        forbid("<QText(Edit|Browser|Document)>" "QPlainTextEdit")
    endif()
    if(NOT file IN_LIST asks)
        forbid("QMessageBox|QInputDialog" "prompts()")
    endif()
endforeach()

if(seen EQUAL 0)
    message(FATAL_ERROR "no file found under ${ROOT}: the check looked at nothing")
endif()
if(faults EQUAL 0)
    message(STATUS "${seen} files looked at, none guesses at markup")
endif()
