package wherefrom.job.image;

/** One frame from a camera, for reading and for the preview. The pixels are not copied. */
public final class CameraFrame {
  private final GreyImage grey;
  private final byte[] bgra;

  /**
   * @param grey the frame in grey values
   * @param bgra the same frame, four bytes a pixel: blue, green, red, 255
   */
  public CameraFrame(GreyImage grey, byte[] bgra) {
    this.grey = grey;
    this.bgra = bgra;
  }

  public GreyImage grey() {
    return grey;
  }

  /** Four bytes a pixel: blue, green, red, 255; not a copy. */
  public byte[] bgra() {
    return bgra;
  }
}
