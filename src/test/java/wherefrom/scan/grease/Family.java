package wherefrom.scan.grease;

/** What happened to the tag or to the picture of it. */
enum Family {
  OIL,
  BLUR,
  SMALL,
  TILT,
  ROD,
  LIGHT,
  TORN,
  NOISE,
  MARKER,
  PAINT,
  MIXED;

  static final int GRADES = 8;
}
