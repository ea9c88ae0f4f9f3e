package wherefrom.ui.torque;

/**
 * How a bolt is drawn.
 *
 * @param number what stands on it; may be empty
 */
record BoltFace(String number, Look look) {
  enum Look {
    /** An empty disc. */
    OPEN,
    /** A filled disc: it has this stage behind it. */
    DONE,
    /** An empty disc with two rims: whether it was done is asked. */
    ASKED,
    /** A large lit disc with a thick rim: it is the next one. */
    TURN
  }
}
