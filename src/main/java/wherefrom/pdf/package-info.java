/** What every PDF shares: the print font, how wide words run, tables, plots and pictures. */
@NullMarked
package wherefrom.pdf;

import org.jspecify.annotations.NullMarked;
