/** Washing and the machine shop: what is away, and what came back without its tag. */
@NullMarked
package wherefrom.ui.shop;

import org.jspecify.annotations.NullMarked;
