@NullMarked
package wherefrom.job.entry;

import org.jspecify.annotations.NullMarked;
