/** What was read before the engine came apart, what it points to, and the hints at each place. */
@NullMarked
package wherefrom.job.before;

import org.jspecify.annotations.NullMarked;
