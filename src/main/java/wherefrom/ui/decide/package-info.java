/** Reuse, machine or replace: proposed by the rules with their reasons, decided by the person. */
@NullMarked
package wherefrom.ui.decide;

import org.jspecify.annotations.NullMarked;
