package wherefrom.rules.debris;

/** One look of debris, found at one place. */
public record DebrisFind(DebrisPlace place, DebrisLook look) {

  /** {@code copper or bronze colour in the filter pleats: the lining of a shell...}. */
  public String words() {
    return look.words() + ", " + place.words();
  }
}
