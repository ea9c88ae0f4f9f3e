/**
 * Cam timing from dial readings over a degree wheel. Angles are crank degrees, zero at the top dead
 * centre where both valves are near their seats, growing the way the engine turns: an intake lobe
 * has its middle near +110, an exhaust lobe near −110.
 */
@NullMarked
package wherefrom.workings.timing;

import org.jspecify.annotations.NullMarked;
