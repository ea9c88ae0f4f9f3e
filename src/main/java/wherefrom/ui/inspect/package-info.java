/** Quick tests at the bench: cards with a drawing, their answers, what is left. */
@NullMarked
package wherefrom.ui.inspect;

import org.jspecify.annotations.NullMarked;
