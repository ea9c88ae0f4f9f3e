package wherefrom.rules;

/** How a verdict is shown and sounded. */
public enum Cue {
  /** A tick in a circle, one short high tone; work moves on. */
  RIGHT,
  /** An octagon, two low tones, repeated; stays until solved. */
  STOP,
  /** A question mark in a square, one middle tone. */
  ASK
}
