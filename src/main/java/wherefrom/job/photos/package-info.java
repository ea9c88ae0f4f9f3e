/** Photographs of parts and of features that carry no tag. */
@NullMarked
package wherefrom.job.photos;

import org.jspecify.annotations.NullMarked;
