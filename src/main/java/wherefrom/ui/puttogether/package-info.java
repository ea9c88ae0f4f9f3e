/** Putting together: each part into the place that it came out of. */
@NullMarked
package wherefrom.ui.puttogether;

import org.jspecify.annotations.NullMarked;
