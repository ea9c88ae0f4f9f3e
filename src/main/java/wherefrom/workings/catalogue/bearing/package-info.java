/** Workings of plain bearings. */
@NullMarked
package wherefrom.workings.catalogue.bearing;

import org.jspecify.annotations.NullMarked;
