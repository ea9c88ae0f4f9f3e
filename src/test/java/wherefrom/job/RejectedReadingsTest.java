package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Dimension;
import wherefrom.rules.Verdict;

/** A reading out of its limit is a finding: the rules that a failed look brings act on it too. */
class RejectedReadingsTest {
  private static final String SOURCE = "this engine's manual, p. 12";
  private final BenchJob bench = BenchJob.v8();
  private final Instruments tools = new Instruments(bench.job);

  @BeforeEach
  void listTool() {
    tools.list("dial", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
  }

  private MeasuredResult take(Subject subject, String plan, String... pairs) {
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (int at = 0; at < pairs.length; at += 2) {
      readings.put(pairs[at], List.of(pairs[at + 1]));
    }
    Measuring.Answer answer =
        new Measuring(bench.job)
            .take(new Measuring.Entry(subject, plan, "dial", readings, false, ""));
    return ((Measuring.Answer.Kept) answer).result();
  }

  private List<String> rules() {
    return bench.job.state().rules().all().stream()
        .map(rule -> rule.consequence().rule())
        .distinct()
        .toList();
  }

  @Test
  void aPushrodOutOfItsRunoutIsBent() {
    tools.limit("pushrod-runout", "value", "", "0.002", SOURCE);
    Subject rod = Subject.ofPart(bench.item("pushrod@3EX"));
    take(rod, "pushrod-runout", "middle", "0.0010");
    assertThat(rules()).doesNotContain("R25");
    take(rod, "pushrod-runout", "middle", "0.0080");
    assertThat(rules()).contains("R25");
    assertThat(bench.verdict("pushrod@3EX")).isInstanceOf(Verdict.MustBeNew.class);
    bench.job.undo();
    assertThat(rules()).doesNotContain("R25");
  }

  /** Lift 0.2935 in, wear limit 0.020 in, so at least 0.2735 in: TM 5-4210-229-14&P, 6-19. */
  @Test
  void aLobeBelowItsLeastLiftHasFailed() {
    tools.limit("lobe-lift", "lift", "0.2735", "", SOURCE);
    Subject lobe = new Subject.AFeature(Feature.LOBE, "3EX");
    take(lobe, "lobe-lift", "heel-toe", "1.2935", "across", "1.0000");
    assertThat(rules()).doesNotContain("R5");
    take(lobe, "lobe-lift", "heel-toe", "1.2700", "across", "1.0000");
    assertThat(rules()).contains("R5");
    assertThat(bench.verdict("lifter@8IN")).isInstanceOf(Verdict.MustBeNew.class);
  }

  @Test
  void aLimitTypedLaterJudgesWhatWasMeasuredBefore() {
    Subject rod = Subject.ofPart(bench.item("pushrod@3EX"));
    take(rod, "pushrod-runout", "middle", "0.0080");
    assertThat(rules()).doesNotContain("R25");
    tools.limit("pushrod-runout", "value", "", "0.002", SOURCE);
    assertThat(rules()).contains("R25");
  }

  /** Five lines may be flat where the sixth is not: five accept nothing. */
  @Test
  void aFaceMeasuredInPartIsNotJudged() {
    tools.limit("head-flatness", "largest", "", "0.004", SOURCE);
    Subject head = new Subject.AFeature(Feature.HEAD, "left");
    String[] five = {
      "front-long",
      "0.001",
      "middle-long",
      "0.001",
      "rear-long",
      "0.001",
      "diagonal-one",
      "0.001",
      "diagonal-two",
      "0.001"
    };
    assertThat(take(head, "head-flatness", five).worst()).isEqualTo(Look.NOT_LOOKED);
    String[] six = java.util.Arrays.copyOf(five, 12);
    six[10] = "across";
    six[11] = "0.006";
    assertThat(take(head, "head-flatness", six).worst()).isEqualTo(Look.FAIL);
  }
}
