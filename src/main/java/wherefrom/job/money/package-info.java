/** What the job costs: one list of pieces and work, and every sum of it. */
@NullMarked
package wherefrom.job.money;

import org.jspecify.annotations.NullMarked;
