package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.inspection.Subject;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Dimension;

/** Parts without tags, as a script tells them. */
class RetagCommandsTest {
  private static final String[] PLACES = {
    "cylinder 1, intake, pushrod", "cylinder 1, exhaust, pushrod", "cylinder 2, intake, pushrod"
  };

  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
    shop.takeApart(job);
    String[] lengths = {"7.9000", "7.9200", "7.9205"};
    shop.change(
        job,
        open -> {
          new Instruments(open).list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
          for (int at = 0; at < 3; at++) {
            String place = PLACES[at];
            int item =
                open.state().parts().stream()
                    .filter(part -> part.part().home().words().equals(place))
                    .findFirst()
                    .orElseThrow()
                    .part()
                    .item();
            new Measuring(open)
                .take(
                    new Measuring.Entry(
                        Subject.ofPart(item),
                        "pushrod-length",
                        "caliper",
                        Map.of("length", List.of(lengths[at])),
                        false,
                        ""));
          }
        });
    for (String place : PLACES) {
      shop.right("wash", "--job", job, "--basket", "1", shop.codes(job, place).tag());
    }
  }

  private Shop.Outcome retag(String verb, String... rest) {
    List<String> words =
        new java.util.ArrayList<>(List.of("retag", verb, "A=7.9000", "B=7.9202", "C=7.9204"));
    words.addAll(List.of("--job", job, "--kind", "pushrod", "--with", "pushrod-length=caliper"));
    words.addAll(List.of(rest));
    return shop.run(words.toArray(String[]::new));
  }

  @Test
  void theOneThatStandsOutIsCertainAndTheTwoAlikeAreNotTold() {
    List<String[]> rows = retag("propose").rows();
    assertThat(rows.get(0)).contains("A", "certain from its readings");
    assertThat(rows.get(0)[2]).startsWith(PLACES[0]);
    assertThat(rows.get(1)[1]).isEqualTo("can't tell");
    assertThat(rows.get(2)[1]).isEqualTo("can't tell");
    assertThat(shop.state(job, PLACES[0])).isEqualTo("washing");
  }

  /** As the usage line has it: the readings come last. */
  @Test
  void theReadingsMayFollowTheTool() {
    String[] call = "A=7.9000 B=7.9202 C=7.9204".split(" ");
    List<String> words = new java.util.ArrayList<>(List.of("retag", "propose", "--job", job));
    words.addAll(List.of("--kind", "pushrod", "--with", "pushrod-length=caliper"));
    words.addAll(List.of(call));
    Shop.Outcome outcome = shop.run(words.toArray(String[]::new));
    assertThat(outcome.status()).isZero();
    assertThat(outcome.out()).isEqualTo(retag("propose").out());
  }

  @Test
  void agreeingBringsThePartBackWithANewIssueOfItsTag() {
    String before = shop.codes(job, PLACES[0]).tag();
    assertThat(retag("accept", "--mark", "A").status()).isZero();
    assertThat(shop.state(job, PLACES[0])).isEqualTo("out");
    assertThat(shop.codes(job, PLACES[0]).tag()).isNotEqualTo(before);
  }

  @Test
  void whatCannotBeToldIsNotAgreedOnUnlessYouSayWhich() {
    Shop.Outcome refused = retag("accept", "--mark", "B");
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("can't tell");
    assertThat(shop.state(job, PLACES[1])).isEqualTo("washing");
  }
}
