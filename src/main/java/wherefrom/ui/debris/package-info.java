/** The debris map: what was found in the oil and where, and what to open next. */
@NullMarked
package wherefrom.ui.debris;

import org.jspecify.annotations.NullMarked;
