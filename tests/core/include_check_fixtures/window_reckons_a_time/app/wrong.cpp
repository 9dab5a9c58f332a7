// Not compiled: the include check must notice this line.
#include "core/chemistry/developing.h"
