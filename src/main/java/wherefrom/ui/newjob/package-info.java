/** Beginning a job: its name, its engine, what is tracked. */
@NullMarked
package wherefrom.ui.newjob;

import org.jspecify.annotations.NullMarked;
