/** From the first start on: the run-in's clock, hours and miles, what is due, service. */
@NullMarked
package wherefrom.ui.running;

import org.jspecify.annotations.NullMarked;
