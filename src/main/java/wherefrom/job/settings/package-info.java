/** What is set for this machine, whatever job is open. */
@NullMarked
package wherefrom.job.settings;

import org.jspecify.annotations.NullMarked;
