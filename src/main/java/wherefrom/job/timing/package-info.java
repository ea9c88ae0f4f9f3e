/** The timing check that the job keeps: dial readings over a degree wheel, card, chain, slack. */
@NullMarked
package wherefrom.job.timing;

import org.jspecify.annotations.NullMarked;
