/** The torque card: which bolt is next, to what, and who checked it. Pure data, no clock. */
@NullMarked
package wherefrom.workings.torque;

import org.jspecify.annotations.NullMarked;
