package wherefrom.drawing;

/** Where a part can lie that is out. */
public enum Holder {
  BENCH(Sign.OUT),
  BASKET(Sign.WASHING),
  VICE(Sign.AT_SHOP),
  NOWHERE(Sign.MISSING);

  private final Sign sign;

  Holder(Sign sign) {
    this.sign = sign;
  }

  /** The mark of a part that lies there. */
  public Sign sign() {
    return sign;
  }
}
