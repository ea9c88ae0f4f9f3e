/** The timing check: chain, slack, dial readings over a degree wheel beside the cam card. */
@NullMarked
package wherefrom.ui.timing;

import org.jspecify.annotations.NullMarked;
