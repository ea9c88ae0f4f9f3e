/** The touch kit: everything a person presses or reads, sized in millimetres. */
@NullMarked
package wherefrom.ui.controls;

import org.jspecify.annotations.NullMarked;
