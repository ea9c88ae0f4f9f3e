/** The command line: the same use cases as the window, for scripts. */
@NullMarked
package wherefrom.cli;

import org.jspecify.annotations.NullMarked;
