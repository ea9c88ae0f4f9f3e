/** Torque cards that the job keeps: written, ticked bolt by bolt, checked by a second person. */
@NullMarked
package wherefrom.job.torque;

import org.jspecify.annotations.NullMarked;
