/** The door for phones, tried from outside. */
@NullMarked
package wherefrom.phone;

import org.jspecify.annotations.NullMarked;
