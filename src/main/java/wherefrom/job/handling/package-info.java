/** A part on the bench: lost, found, replaced, back out, with a note. */
@NullMarked
package wherefrom.job.handling;

import org.jspecify.annotations.NullMarked;
