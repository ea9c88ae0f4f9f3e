/** Tags, cards and the sheets that they are printed on. */
@NullMarked
package wherefrom.job.print;

import org.jspecify.annotations.NullMarked;
