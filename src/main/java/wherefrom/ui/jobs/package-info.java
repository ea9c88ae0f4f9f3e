/** The list of jobs: open one, begin one, bring one back. */
@NullMarked
package wherefrom.ui.jobs;

import org.jspecify.annotations.NullMarked;
