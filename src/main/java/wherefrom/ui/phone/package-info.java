/** Phones that join the open job: the code they join by, who has joined, and the end of it. */
@NullMarked
package wherefrom.ui.phone;

import org.jspecify.annotations.NullMarked;
