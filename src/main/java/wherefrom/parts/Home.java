package wherefrom.parts;

/** Which kind of spot a part lives at. */
public enum Home {
  VALVE,
  BORE,
  ROD,
  MAIN,
  CAM_BEARING
}
