/** Many parts in one picture: which they are, what is wanting, and all of them out at once. */
@NullMarked
package wherefrom.job.tray;

import org.jspecify.annotations.NullMarked;
