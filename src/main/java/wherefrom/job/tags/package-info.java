/** What a tag stands for in a job, and the kinds of part that are tracked. */
@NullMarked
package wherefrom.job.tags;

import org.jspecify.annotations.NullMarked;
