/** Measuring with tools of known uncertainty, and comparing what was measured. */
@NullMarked
package wherefrom.job.measure;

import org.jspecify.annotations.NullMarked;
