/** Build record and machine-shop slip, as PDF and as tables. */
@NullMarked
package wherefrom.report;

import org.jspecify.annotations.NullMarked;
