/** From the first start on: the run-in, hours and miles, what is due, and service. */
@NullMarked
package wherefrom.job.running;

import org.jspecify.annotations.NullMarked;
