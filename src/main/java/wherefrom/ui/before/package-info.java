/** Before teardown: gauges on an engine that is still together, and what they point to. */
@NullMarked
package wherefrom.ui.before;

import org.jspecify.annotations.NullMarked;
