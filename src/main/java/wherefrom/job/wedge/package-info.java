/** Scanners that pose as a keyboard: finds their codes in what is typed. */
@NullMarked
package wherefrom.job.wedge;

import org.jspecify.annotations.NullMarked;
