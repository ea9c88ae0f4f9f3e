package wherefrom.parts;

/** What must not be turned when a part goes back. */
public enum Orientation {
  NONE(""),
  TOP_END("this end up"),
  HALF("upper and lower differ"),
  FACING("same way around");

  private final String mark;

  Orientation(String mark) {
    this.mark = mark;
  }

  /** The words printed on the tag; empty when nothing binds. */
  public String mark() {
    return mark;
  }
}
