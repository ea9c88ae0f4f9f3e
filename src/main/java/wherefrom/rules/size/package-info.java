/** Surfaces that are cut in steps from a standard size, and how such sizes are said. */
@NullMarked
package wherefrom.rules.size;

import org.jspecify.annotations.NullMarked;
