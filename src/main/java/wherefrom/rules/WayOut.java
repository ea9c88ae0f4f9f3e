package wherefrom.rules;

/**
 * What leads out of a stop; one stands first. After a deed the part is judged again, and goes in by
 * its place card.
 */
public enum WayOut {
  SCAN_RIGHT_PART("Scan the right part", "or type its code"),
  SCAN_OWN_PLACE("Scan its own place", "or type its code"),
  SCAN_NEW_PART("Scan the new part", "or type its code"),
  SCAN_NEWER_TAG("Scan the newer tag", "or type its code"),
  SCAN_AGAIN("Scan it again", "or type its code"),
  TURN_IT("Turn it, scan again", "or type its code"),
  DECIDE("Decide", "reuse, machine, replace"),
  DO_THE_CHECK("Do the check", "and record it"),
  FOUND("It is found", "I have it in my hand"),
  BACK_FROM_WASHING("It is back", "from washing"),
  BACK_FROM_SHOP("It is back", "from the machine shop"),
  NEW_PART("Get a new part", "this one is retired"),
  CAP_WAS_OFF("The cap was off", "it is fitted again later"),
  TAKE_OUT("Taken out there", "then it is judged again"),
  MAKE_ROOM("That one is out", "then yours is judged"),
  HEAD("Go to its head", "say where it is"),
  SHAFT("Go to its shaft", "say where it is"),
  CAP("Go to its cap", "say where it is"),
  ROD("Go to its rod", "say where it is"),
  PAGE("See its page", "what is known of it");

  private final String words;
  private final String more;

  WayOut(String words, String more) {
    this.words = words;
    this.more = more;
  }

  /** What to do, in a few words. */
  public String words() {
    return words;
  }

  /** How else, or what follows. */
  public String more() {
    return more;
  }

  /** Whether a place card is wanted. */
  public boolean isPlace() {
    return this == SCAN_OWN_PLACE;
  }

  /** Whether another scan is what leads out. */
  public boolean isScan() {
    return compareTo(TURN_IT) <= 0;
  }
}
