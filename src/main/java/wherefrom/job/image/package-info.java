/** Pictures in grey and in color as they are handed on, and the cameras that they come from. */
@NullMarked
package wherefrom.job.image;

import org.jspecify.annotations.NullMarked;
