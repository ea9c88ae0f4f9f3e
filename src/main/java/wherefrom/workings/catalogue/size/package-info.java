/** Workings of bores and journals: shape, and the next size that cleans up. */
@NullMarked
package wherefrom.workings.catalogue.size;

import org.jspecify.annotations.NullMarked;
