package wherefrom.drawing;

/** From where the engine is seen. */
public enum View {
  ABOVE,
  BELOW
}
