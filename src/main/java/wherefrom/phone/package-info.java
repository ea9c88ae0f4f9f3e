/**
 * The door for phones: a small server on this network, and the page that it serves. It is loaded
 * when it is asked for. What comes in is counted, timed and held against a fixed table before the
 * job hears of it.
 */
@NullMarked
package wherefrom.phone;

import org.jspecify.annotations.NullMarked;
