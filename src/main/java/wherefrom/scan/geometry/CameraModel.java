package wherefrom.scan.geometry;

/**
 * The camera as far as it matters for bent tags: centre of the picture and focal length in pixels.
 *
 * @param focal an angle of view of about 60 degrees is taken where nothing is known
 */
public record CameraModel(double centreX, double centreY, double focal) {
  private static final double USUAL = 0.88;

  public static CameraModel of(int width, int height) {
    return new CameraModel(width / 2.0, height / 2.0, USUAL * Math.max(width, height));
  }
}
