/** Parts of a set held against each other: which one is odd, which stud stands proud. */
@NullMarked
package wherefrom.inspection.compare;

import org.jspecify.annotations.NullMarked;
