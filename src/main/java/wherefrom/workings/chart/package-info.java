/** Plots as lines, areas and words on a surface of any size, for a screen or for paper. */
@NullMarked
package wherefrom.workings.chart;

import org.jspecify.annotations.NullMarked;
