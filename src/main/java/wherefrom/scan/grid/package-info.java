/** Third stage: one soft value for each module. */
@NullMarked
package wherefrom.scan.grid;

import org.jspecify.annotations.NullMarked;
