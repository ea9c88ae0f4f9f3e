/** A phone as a bench of its own: what it can do at the job, and what it shows. */
@NullMarked
package wherefrom.job.phone;

import org.jspecify.annotations.NullMarked;
