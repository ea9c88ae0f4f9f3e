/** Torque cards: written, worked through bolt by bolt, checked by a second person. */
@NullMarked
package wherefrom.ui.torque;

import org.jspecify.annotations.NullMarked;
