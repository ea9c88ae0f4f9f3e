/** Readings at the bench: what is read where, with which tool, and what follows from them. */
@NullMarked
package wherefrom.inspection.measure;

import org.jspecify.annotations.NullMarked;
