/** The build record: what stands in it, in which order. */
@NullMarked
package wherefrom.job.record;

import org.jspecify.annotations.NullMarked;
