package wherefrom.workings.catalogue.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import wherefrom.workings.Result;
import wherefrom.workings.catalogue.Ask;

/**
 * The intake correction against a construction in space: engine axes x outward to the bank, y along
 * the crank, z up. The head and the manifold carry one bolt hole each on the common face; head and
 * manifold are moved, and what each must lose is read off from where plane and holes end up.
 */
class IntakeGeometryTest {
  private static final Vector CRANK = new Vector(0, 1, 0);
  private static final double NEAR = 1e-9;

  /** A vector in space. */
  private record Vector(double x, double y, double z) {
    Vector plus(Vector other) {
      return new Vector(x + other.x, y + other.y, z + other.z);
    }

    Vector minus(Vector other) {
      return plus(other.times(-1));
    }

    Vector times(double factor) {
      return new Vector(x * factor, y * factor, z * factor);
    }

    double dot(Vector other) {
      return x * other.x + y * other.y + z * other.z;
    }

    Vector cross(Vector o) {
      return new Vector(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double length() {
      return Math.sqrt(dot(this));
    }
  }

  /** Turns about the crank, from straight up towards the bank. */
  private static Vector leaning(double degrees) {
    double angle = Math.toRadians(degrees);
    return new Vector(Math.sin(angle), 0, Math.cos(angle));
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
    Vector cylinder = leaning(beta);
    Vector deckInward = CRANK.cross(cylinder).times(-1);
    assertThat(deckInward.x()).isNegative();
    // The face leaves the deck's inner edge at the face angle, measured inside the head, which
    // lies outward of that edge.
    Vector alongFace = turned(deckInward.times(-1), cylinder, alpha);
    Vector normal = CRANK.cross(alongFace);
    normal = normal.x() > 0 ? normal.times(-1) : normal;
    Vector hole = new Vector(80, 30, 200);
    Vector headHole = hole.plus(cylinder.times(-cut));

    double slide = result.getValue("slide").value();
    double rails = result.getValue("rails").value();
    double faceOff = result.getValue("face").value();

    // Uncorrected: the manifold drops until its face touches the lowered head's face.
    double touch = headHole.minus(hole).dot(normal) / -normal.z();
    Vector sunk = hole.plus(new Vector(0, 0, -touch));
    assertThat(sunk.minus(headHole).length()).isCloseTo(Math.abs(slide), within(NEAR));

    // Corrected: the rails let the manifold drop by so much; its hole then lies on the normal
    // through the head's hole, and the gap along it is what the face must lose.
    Vector dropped = hole.plus(new Vector(0, 0, -rails));
    Vector apart = dropped.minus(headHole);
    assertThat(apart.dot(alongFace)).isCloseTo(0, within(NEAR));
    assertThat(apart.dot(normal)).isCloseTo(-faceOff, within(NEAR));
  }

  /** From one direction by an angle towards another at right angles to it. */
  private static Vector turned(Vector from, Vector towards, double degrees) {
    double angle = Math.toRadians(degrees);
    return from.times(Math.cos(angle)).plus(towards.times(Math.sin(angle)));
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
