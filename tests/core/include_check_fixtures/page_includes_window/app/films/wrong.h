// Not compiled: the include check must notice this line.
#include "app/window/main_window.h"
