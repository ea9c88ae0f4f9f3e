package wherefrom.parts;

/** A big part and where it is now. */
public record BigPartAt(BigPart part, Whereabouts where) {

  /** Whether it is on the engine: never taken off, or on again. */
  public boolean isOn() {
    return where == Whereabouts.IN_ENGINE || where == Whereabouts.FITTED;
  }

  /** Whether it is not at hand: being washed, at the machine shop, or lost. */
  public boolean isAway() {
    return !isOn() && where != Whereabouts.OUT;
  }
}
