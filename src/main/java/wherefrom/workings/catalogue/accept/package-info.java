/** Workings that set a reading beside its limit, uncertainty and all. */
@NullMarked
package wherefrom.workings.catalogue.accept;

import org.jspecify.annotations.NullMarked;
