// For the one source with main() of a program with a window: font, theme and desktop libraries keep
// what they allocated until the process ends, so such a program is not asked for leaks. All others
// are. Every other fault counts here too.
#pragma once

extern "C" const char* __asan_default_options();
const char* __asan_default_options() { return "detect_leaks=0"; }
