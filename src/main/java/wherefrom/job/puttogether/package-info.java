/** Putting the engine together: each part into its place, what stops it, what is missing yet. */
@NullMarked
package wherefrom.job.puttogether;

import org.jspecify.annotations.NullMarked;
