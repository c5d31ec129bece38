#include "app.h"
enum exit_status command_due(const struct options *options) { (void)options; return EXIT_GOOD; }
