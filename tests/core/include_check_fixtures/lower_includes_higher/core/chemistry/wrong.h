// Not compiled: the include check must notice this line.
#pragma once

#include "core/ledger/event.h"
