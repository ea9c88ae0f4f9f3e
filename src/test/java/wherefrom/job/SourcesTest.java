package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Citations;
import wherefrom.inspection.Printed;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.rules.consequence.ConsequenceRules;
import wherefrom.rules.consequence.Rule;
import wherefrom.workings.catalogue.Workings;

/** Every source that is shown can be found by whoever reads it, or says that there is none. */
class SourcesTest {
  private static Stream<String> shown() {
    return Stream.of(
            Checks.all().stream().map(check -> check.source()),
            Checks.all().stream().flatMap(check -> check.printed().stream()).map(Printed::source),
            ReadingPlans.all().stream().map(ReadingPlan::source),
            ConsequenceRules.all().stream().map(Rule::source),
            Arrays.stream(Caution.values()).map(Caution::source),
            Workings.all().stream().map(working -> working.card().source().text()))
        .flatMap(stream -> stream)
        .filter(source -> !source.isEmpty());
  }

  @Test
  void eachIsFoundByItsNumberOrByTitleAndYear() {
    TreeSet<String> all = new TreeSet<>(shown().toList());
    assertThat(all).hasSizeGreaterThan(30);
    List<String> lost = all.stream().filter(source -> !Citations.canBeFound(source)).toList();
    assertThat(lost).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a repair manual, pp. 3-61/62",
        "magazine article, 2004",
        "fastener article, 2020: T = K·D·F",
        "a camshaft maker's tip page",
        "trade quiz page: 3 in bore, 0.012 in",
        "FAA-H-8083-32, chapter 1; terms as in a magazine article, 2004",
        "Circle Track, \"Compression Ratio Rules\"",
        "some web page"
      })
  void aKindOfBookIsNoSource(String source) {
    assertThat(Citations.canBeFound(source)).isFalse();
  }
}
