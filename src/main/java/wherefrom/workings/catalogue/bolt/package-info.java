/** Workings of bolts: torque, preload and angle. */
@NullMarked
package wherefrom.workings.catalogue.bolt;

import org.jspecify.annotations.NullMarked;
