package wherefrom.ui.app;

/** Takes what a scanner, the camera or a picture file has read. */
public interface Scannable {
  /** Takes one code; the window is drawn once it has been taken. */
  void scan(Scanned scanned);
}
