/** The workings of a rebuild, one small class each, and the list of them all. */
@NullMarked
package wherefrom.workings.catalogue;

import org.jspecify.annotations.NullMarked;
