package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Spot;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.puttogether.Fitting;
import wherefrom.quantity.Dimension;
import wherefrom.rules.Hold;
import wherefrom.rules.PartNames;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictWords;

/** A part that is not cleared: the card names the finding that the verdict rests on. */
class WhatIsDoubtedTest {
  private static final String SPRING = "spring@3EX";

  private final BenchJob bench = BenchJob.v8();
  private final Instruments tools = new Instruments(bench.job);

  @BeforeEach
  void limit() {
    tools.list("caliper", Dimension.LENGTH, "0.0005", "0.0005", "0.0005");
    tools.limit("spring-free", "value", "1.900", "", "manual, page 6-12");
  }

  private void measure(String free) {
    Measuring.Answer answer =
        new Measuring(bench.job)
            .take(
                new Measuring.Entry(
                    Subject.ofPart(bench.item(SPRING)),
                    "spring-free",
                    "caliper",
                    Map.of("height", List.of(free)),
                    true,
                    ""));
    assertThat(answer).isInstanceOf(Measuring.Answer.Kept.class);
  }

  private VerdictWords words() {
    assertThat(bench.word(SPRING)).isEqualTo("not cleared");
    return bench.verdict(SPRING).words(names());
  }

  private PartNames names() {
    return new JobPartNames(bench.job.state());
  }

  @Test
  void aReadingIsNamedLikeALook() {
    measure("1.8000");
    assertThat(words().small()).isEqualTo("Spring free height: fail.");
    assertThat(words().lines()).contains("Found: fail");
  }

  /** The look was known when it was decided; the reading came after. */
  @Test
  void whatWasKnownBeforeTheDecisionIsNotNamed() {
    bench.look(SPRING, "spring-square", Look.FAIL);
    bench.decide(SPRING, Decision.REUSE);
    assertThat(bench.word(SPRING)).isEqualTo("right place");
    measure("1.8000");
    assertThat(words().small()).isEqualTo("Spring free height: fail.");
  }

  @Test
  void theWorstIsNamedWhereNothingIsDecided() {
    measure("1.8000");
    bench.look(SPRING, "spring-square", Look.SUSPECT);
    assertThat(words().small()).isEqualTo("Spring free height: fail.");
    assertThat(names().findFound(bench.part(SPRING)).orElseThrow().look()).isEqualTo("fail");
  }

  @Test
  void nothingIsNamedWhereNothingIsInDoubt() {
    measure("1.9500");
    bench.look(SPRING, "spring-square", Look.PASS);
    assertThat(names().findFound(bench.part(SPRING))).isEmpty();
  }

  /** A part that may not go in is not asked for as if scanning it led out of the stop. */
  @Test
  void aRightPartThatIsToBeReplacedIsNotNamedAsIfItCouldGoIn() {
    Verdict wrong = new Fitting(bench.job).judge(bench.part("spring@3IN"), spot(SPRING), false);
    String code = names().code(bench.part(SPRING));
    assertThat(wrong.words(names()).lines()).contains("Right part: " + code);
    bench.decide(SPRING, Decision.REPLACE);
    assertThat(wrong.words(names()).lines())
        .contains("Right part: " + code + ", " + Hold.TO_REPLACE.words());
  }

  private Spot spot(String place) {
    return bench.part(place).home().spot();
  }
}
