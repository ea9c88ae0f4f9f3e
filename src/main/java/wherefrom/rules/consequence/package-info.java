/** What a change or a finding means for the rest of the engine: one row for each rule. */
@NullMarked
package wherefrom.rules.consequence;

import org.jspecify.annotations.NullMarked;
