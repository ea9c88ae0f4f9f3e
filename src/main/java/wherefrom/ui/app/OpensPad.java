package wherefrom.ui.app;

/** Has one figure that is asked for on a pad: what is typed here opens it. */
public interface OpensPad {
  /** Opens the pad. */
  void openPad();
}
