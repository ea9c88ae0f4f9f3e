/**
 * The plan of a rebuild: how things are now and up to three what-ifs beside it, each worked out
 * from the wanted ratio down to the room at the valves.
 */
@NullMarked
package wherefrom.workings.plan;

import org.jspecify.annotations.NullMarked;
