/**
 * The arithmetic of a rebuild: what a working is, what it takes, what it answers. A missing input
 * is asked for, never assumed; every input's uncertainty is carried through to first order (JCGM
 * 100:2008, 5.1).
 */
@NullMarked
package wherefrom.workings;

import org.jspecify.annotations.NullMarked;
