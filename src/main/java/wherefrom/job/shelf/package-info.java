/** The jobs of a folder, and where each was left. */
@NullMarked
package wherefrom.job.shelf;

import org.jspecify.annotations.NullMarked;
