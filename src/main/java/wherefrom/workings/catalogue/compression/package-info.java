/** Workings of cylinder, chamber and compression. */
@NullMarked
package wherefrom.workings.catalogue.compression;

import org.jspecify.annotations.NullMarked;
