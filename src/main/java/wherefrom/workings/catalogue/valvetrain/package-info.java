/** Workings of lift, pushrods, springs and valves. */
@NullMarked
package wherefrom.workings.catalogue.valvetrain;

import org.jspecify.annotations.NullMarked;
