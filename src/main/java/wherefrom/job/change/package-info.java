/** Changes to the engine, planned and made, and what serves them. */
@NullMarked
package wherefrom.job.change;

import org.jspecify.annotations.NullMarked;
