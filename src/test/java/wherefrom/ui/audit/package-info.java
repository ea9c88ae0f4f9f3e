/** Looks over a laid-out window: sizes, gaps, text, contrast. */
package wherefrom.ui.audit;
