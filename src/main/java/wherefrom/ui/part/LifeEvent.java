package wherefrom.ui.part;

/**
 * Something that happened to a part.
 *
 * @param day such as {@code 14 Mar}
 * @param words what happened, such as {@code came out}
 */
record LifeEvent(String day, String words) {}
