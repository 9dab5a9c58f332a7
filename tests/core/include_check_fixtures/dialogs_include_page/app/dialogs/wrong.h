// Not compiled: the include check must notice this line.
#include "app/shelf/shelf_views.h"
