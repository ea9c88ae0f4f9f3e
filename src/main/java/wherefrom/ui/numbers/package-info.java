/** The numbers of a rebuild: single workings, the plan with its what-ifs, plots. */
@NullMarked
package wherefrom.ui.numbers;

import org.jspecify.annotations.NullMarked;
