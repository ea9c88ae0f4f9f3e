/** Changes: what follows from each, shown before money is spent; what stands, and open checks. */
@NullMarked
package wherefrom.ui.changes;

import org.jspecify.annotations.NullMarked;
