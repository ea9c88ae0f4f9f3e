package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Unread;
import wherefrom.job.reader.Unread.Cause;
import wherefrom.parts.TagCode;
import wherefrom.scan.PipelineReader;

/**
 * What a person is told to do about a tag that was found and not read, beside what was done to it:
 * frames that are worse than those of the bench, read without their list.
 */
class HintFitsTest {
  private static final List<TagCode> ISSUED = GreaseFrames.issued(1_234_567);
  private static final List<TagCode> OTHERS = GreaseFrames.issued(7_050_301);
  private static final int HEIGHT = 480;

  /** Grades beyond the bench's eight. */
  private static final int[] GRADES = {9, 11};

  private static final Map<Family, Set<Cause>> FITTING = fitting();

  private final PipelineReader reader = new PipelineReader();
  private final Map<String, Map<Cause, Integer>> told = new LinkedHashMap<>();
  private int right;
  private int all;

  private static Map<Family, Set<Cause>> fitting() {
    Map<Family, Set<Cause>> fitting = new EnumMap<>(Family.class);
    fitting.put(Family.WRINKLED, Set.of(Cause.CRUMPLED));
    fitting.put(Family.SMALL, Set.of(Cause.TOO_SMALL));
    fitting.put(Family.BLUR, Set.of(Cause.BLURRED));
    fitting.put(Family.MOTION, Set.of(Cause.BLURRED));
    fitting.put(Family.OIL, Set.of(Cause.DIRTY));
    fitting.put(Family.MARKER, Set.of(Cause.DIRTY));
    fitting.put(Family.PAINT, Set.of(Cause.DIRTY));
    fitting.put(Family.SOAKED, Set.of(Cause.DIRTY));
    return fitting;
  }

  @Test
  void theHintFitsTheDamage() {
    look(8_100, 1);
    expect(0.75);
  }

  @Test
  @Tag("bench")
  void theHintFitsTheDamageOfManyFrames() {
    look(8_200, Integer.getInteger("hint.seeds", 8));
    expect(0.85);
  }

  private void look(int first, int seeds) {
    for (int seed = first; seed < first + seeds; seed++) {
      for (int grade : GRADES) {
        for (Map.Entry<Family, Set<Cause>> kind : FITTING.entrySet()) {
          Family family = kind.getKey();
          TagCode code = GreaseFrames.pick(ISSUED, GreaseFrames.seed(family, grade, seed, HEIGHT));
          GreaseFrame frame = GreaseFrames.frame(family, grade, seed, HEIGHT, code);
          count(family.name(), kind.getValue(), frame.image(), frame.corners());
        }
        lit("DARK", Cause.TOO_DARK, seed, grade);
        lit("GLARE", Cause.GLARE, seed, grade);
      }
    }
  }

  /** The marked tag in too little light, or under a lamp that shines back. */
  private void lit(String name, Cause cause, int seed, int grade) {
    long number = GreaseFrames.seed(Family.MARKER, 12, seed * 16 + grade, HEIGHT);
    TagCode code = GreaseFrames.pick(ISSUED, number);
    GreaseFrame frame = GreaseFrames.frame(Family.MARKER, 12, seed * 16 + grade, HEIGHT, code);
    Plane plane = new Plane(frame.image().width(), frame.image().height());
    for (int at = 0; at < plane.values.length; at++) {
      plane.values[at] = (frame.image().pixels()[at] & 0xFF) / 255f;
    }
    if (cause == Cause.TOO_DARK) {
      Shot.flatten(plane, 1, 0, 0.2);
    } else {
      double x = frame.corners().stream().mapToDouble(Corner::x).average().orElseThrow();
      double y = frame.corners().stream().mapToDouble(Corner::y).average().orElseThrow();
      Shot.glare(plane, x, y, 0.05 * HEIGHT, 1.4);
    }
    Shot.noise(plane, 2.5, new SplittableRandom(seed));
    count(name, Set.of(cause), plane.toGrey(), frame.corners());
  }

  private void count(String name, Set<Cause> fitting, GreyImage image, List<Corner> corners) {
    Reading reading = reader.read(image, OTHERS);
    for (Unread unread : reading.unread()) {
      if (UnreadOnceTest.liesOn(corners, unread)) {
        told.computeIfAbsent(name, made -> new EnumMap<>(Cause.class))
            .merge(unread.cause(), 1, Integer::sum);
        all++;
        right += fitting.contains(unread.cause()) ? 1 : 0;
      }
    }
  }

  /** Every kind was shown, its own hint is the most frequent one, and few frames have another. */
  private void expect(double share) {
    System.out.println(told + "\n" + right + " of " + all);
    assertThat(told).as(told.toString()).hasSizeGreaterThanOrEqualTo(7);
    assertThat(told).containsKeys("WRINKLED", "SMALL", "MARKER", "DARK", "GLARE");
    assertThat(told.get("WRINKLED")).containsKey(Cause.CRUMPLED);
    assertThat((double) right / all).as(told.toString()).isGreaterThanOrEqualTo(share);
  }
}
