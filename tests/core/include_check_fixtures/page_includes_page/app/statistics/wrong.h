// Not compiled: the include check must notice this line.
#include "app/daybook/day_model.h"
