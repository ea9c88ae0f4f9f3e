/** The whole engine: where every part is, and off for washing and back. */
@NullMarked
package wherefrom.ui.benchmap;

import org.jspecify.annotations.NullMarked;
