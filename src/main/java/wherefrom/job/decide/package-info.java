/** What becomes of each used part: proposals and decisions. */
@NullMarked
package wherefrom.job.decide;

import org.jspecify.annotations.NullMarked;
