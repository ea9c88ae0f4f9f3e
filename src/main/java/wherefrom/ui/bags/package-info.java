/** Bags of fasteners and big parts: what is off, in which bag, still to fit. */
@NullMarked
package wherefrom.ui.bags;

import org.jspecify.annotations.NullMarked;
