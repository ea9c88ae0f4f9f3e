package wherefrom.drawing;

/** A column of a cylinder drawn large. */
public enum Column {
  EXHAUST,
  INTAKE,
  BOTTOM
}
