/** Jobs on a shared server: several benches write one logbook, photographs lie beside it. */
@NullMarked
package wherefrom.server;

import org.jspecify.annotations.NullMarked;
