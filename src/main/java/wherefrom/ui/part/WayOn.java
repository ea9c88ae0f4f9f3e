package wherefrom.ui.part;

/**
 * What the tag of a part's page does.
 *
 * @param words what to do, in a few words
 * @param more how else, or why
 */
record WayOn(Deed deed, String words, String more) {}
