// Carries the precompiled headers.
#include "core/store/precompiled.h"
