package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import wherefrom.workings.Result;

/**
 * The intake correction against a construction in space: engine axes x outward to the bank, y along
 * the crank, z up. The head and the manifold carry one bolt hole each on the common face; head and
 * manifold are moved, and what each must lose is read off from where plane and holes end up.
 */
class IntakeGeometryTest {
  private static final Vector3D CRANK = new Vector3D(0, 1, 0);
  private static final double NEAR = 1e-9;

  /** Turns about the crank, from straight up towards the bank. */
  private static Vector3D leaning(double degrees) {
    double angle = Math.toRadians(degrees);
    return new Vector3D(Math.sin(angle), 0, Math.cos(angle));
  }

  private static Result ask(double cut, double bank, double face) {
    return Ask.result(
        "intake-correction",
        "cut=" + cut + "mm",
        "bank-angle=" + bank + "deg",
        "face-angle=" + face + "deg");
  }

  @Test
  void agreesWithAConstructionInSpace() {
    Random random = new Random(3);
    for (int i = 0; i < 2_000; i++) {
      double cut = Math.round(100 + 2_900 * random.nextDouble()) / 1000.0;
      double bank = Math.round(40 + 60 * random.nextDouble());
      double face = Math.round(65 + 45 * random.nextDouble());
      Result result = ask(cut, bank, face);
      check(result, cut, bank / 2, face);
    }
  }

  private static void check(Result result, double cut, double beta, double alpha) {
    Vector3D cylinder = leaning(beta);
    Vector3D deckInward = Vector3D.crossProduct(CRANK, cylinder).negate();
    assertThat(deckInward.getX()).isNegative();
    // The face leaves the deck's inner edge at the face angle, measured inside the head, which
    // lies outward of that edge.
    Vector3D alongFace = turned(deckInward.negate(), cylinder, alpha);
    Vector3D normal = Vector3D.crossProduct(CRANK, alongFace).normalize();
    normal = normal.getX() > 0 ? normal.negate() : normal;
    Vector3D hole = new Vector3D(80, 30, 200);
    Vector3D headHole = hole.add(cylinder.scalarMultiply(-cut));

    double slide = result.getValue("slide").value();
    double rails = result.getValue("rails").value();
    double faceOff = result.getValue("face").value();

    // Uncorrected: the manifold drops until its face touches the lowered head's face.
    double touch = headHole.subtract(hole).dotProduct(normal) / -normal.getZ();
    Vector3D sunk = hole.add(new Vector3D(0, 0, -touch));
    assertThat(sunk.distance(headHole)).isCloseTo(Math.abs(slide), within(NEAR));

    // Corrected: the rails let the manifold drop by so much; its hole then lies on the normal
    // through the head's hole, and the gap along it is what the face must lose.
    Vector3D dropped = hole.add(new Vector3D(0, 0, -rails));
    Vector3D apart = dropped.subtract(headHole);
    assertThat(apart.dotProduct(alongFace.normalize())).isCloseTo(0, within(NEAR));
    assertThat(apart.dotProduct(normal)).isCloseTo(-faceOff, within(NEAR));
  }

  /** From one direction by an angle towards another at right angles to it. */
  private static Vector3D turned(Vector3D from, Vector3D towards, double degrees) {
    double angle = Math.toRadians(degrees);
    return from.scalarMultiply(Math.cos(angle)).add(towards.scalarMultiply(Math.sin(angle)));
  }

  @Test
  void givesTheTradesTableForNinetyDegrees() {
    // The trade's usual table 1.1/1.2/1.4/1.7/2.0/3.0/4.0 (from memory) is this row rounded.
    double[] face = {1.000, 1.100, 1.233, 1.414, 1.673, 2.067, 2.732, 4.072};
    double[] rails = {1.414, 1.550, 1.717, 1.932, 2.224, 2.650, 3.346, 4.717};
    for (int i = 0; i < face.length; i++) {
      Result result = ask(1, 90, 90 - 5 * i);
      assertThat(result.getValue("face").value()).isCloseTo(face[i], within(0.0005));
      assertThat(result.getValue("rails").value()).isCloseTo(rails[i], within(0.0005));
    }
  }

  @Test
  void givesTheFiguresForSixtyDegrees() {
    assertThat(ask(1, 60, 90).getValue("face").value()).isCloseTo(0.577, within(0.0005));
    assertThat(ask(1, 60, 80).getValue("face").value()).isCloseTo(0.653, within(0.0005));
    assertThat(ask(1, 60, 60).getValue("face").value()).isCloseTo(1.000, within(0.0005));
  }

  @Test
  void givesTheWorkedExampleInInches() {
    Result result =
        Ask.result("intake-correction", "cut=0.030in", "bank-angle=90deg", "face-angle=80deg");
    assertThat(result.getValue("face").value()).isCloseTo(0.0370, within(0.00005));
    assertThat(result.getValue("rails").value()).isCloseTo(0.0515, within(0.00005));
  }
}
