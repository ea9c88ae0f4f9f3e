/** Printing tags and cards on label stock. */
@NullMarked
package wherefrom.ui.print;

import org.jspecify.annotations.NullMarked;
