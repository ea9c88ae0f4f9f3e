/** Money: cost lines, the budget, prices, and what a change would cost. */
@NullMarked
package wherefrom.ui.money;

import org.jspecify.annotations.NullMarked;
