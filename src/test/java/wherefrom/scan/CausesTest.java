package wherefrom.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Unread;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.Pose;

/** Which hint a tag gives that was found and not read. */
class CausesTest {
  private static final int SIDE = 200;
  private static final LabelPattern PATTERN = LabelPattern.printed();
  private static final CameraModel CAMERA = CameraModel.of(SIDE, SIDE);

  private static Unread.Cause cause(double module, IntBinaryOperator grey) {
    byte[] pixels = new byte[SIDE * SIDE];
    for (int at = 0; at < pixels.length; at++) {
      pixels[at] = (byte) grey.applyAsInt(at % SIDE, at / SIDE);
    }
    Pose pose =
        Pose.ofAxes(SIDE / 2.0, SIDE / 2.0, new double[] {module, 0}, new double[] {0, module});
    return Causes.of(new GreyImage(SIDE, SIDE, pixels), pose, PATTERN, CAMERA);
  }

  private static int chequered(int x, int y, int dark, int light) {
    return (x / 6 + y / 6) % 2 == 0 ? dark : light;
  }

  @Test
  void aDirtyTagIsSharpAndLitWell() {
    assertThat(cause(6, (x, y) -> chequered(x, y, 40, 190))).isEqualTo(Unread.Cause.DIRTY);
  }

  @Test
  void aTagOfTwoPixelsAModuleIsTooFarAway() {
    assertThat(cause(2, (x, y) -> chequered(x, y, 40, 190))).isEqualTo(Unread.Cause.TOO_SMALL);
  }

  @Test
  void whereNothingIsBrightItIsTooDark() {
    assertThat(cause(6, (x, y) -> chequered(x, y, 5, 50))).isEqualTo(Unread.Cause.TOO_DARK);
  }

  @Test
  void aWhiteSpotOverTheTagIsGlare() {
    assertThat(cause(6, (x, y) -> x < SIDE / 2 ? 255 : chequered(x, y, 40, 190)))
        .isEqualTo(Unread.Cause.GLARE);
  }

  @Test
  void slowSlopesAreBlur() {
    assertThat(cause(6, (x, y) -> (int) (115 + 75 * Math.sin(x / 20.0) * Math.cos(y / 20.0))))
        .isEqualTo(Unread.Cause.BLURRED);
  }
}
