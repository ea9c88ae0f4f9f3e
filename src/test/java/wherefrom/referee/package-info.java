/**
 * A second judge of what goes where, written from tables and sharing no code with the program: it
 * is told the same acts, and both must say the same of every part at every place.
 */
package wherefrom.referee;
