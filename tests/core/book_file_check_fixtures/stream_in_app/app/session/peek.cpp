#include <fstream>

char first(const char* path) { return static_cast<char>(std::ifstream(path).get()); }
