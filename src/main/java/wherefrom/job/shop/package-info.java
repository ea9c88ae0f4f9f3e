/** Parts away from the bench: at the machine shop, at the washing, under new tags. */
@NullMarked
package wherefrom.job.shop;

import org.jspecify.annotations.NullMarked;
