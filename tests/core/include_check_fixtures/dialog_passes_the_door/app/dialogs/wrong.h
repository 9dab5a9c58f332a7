// Not compiled: the include check must notice this line.
#include "app/session/session.h"
