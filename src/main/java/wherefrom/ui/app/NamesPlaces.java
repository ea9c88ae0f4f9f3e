package wherefrom.ui.app;

/** Has places that can be named on a keyboard instead of tapped on the drawing. */
public interface NamesPlaces {
  /** What is said to letters that name no place. */
  String WANTED = "Type a tag's six digits. Or a place: 3I, 3E, R4U, M2L.";

  /**
   * Takes a place by its short name, as if it was tapped.
   *
   * @param typed such as {@code 3I}, {@code 3ex}, {@code R4U}, {@code M2L}
   * @return whether it is the name of a place that can be tapped now
   */
  boolean takePlace(String typed);
}
