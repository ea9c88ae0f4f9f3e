package wherefrom.job.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.GoodsWay;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.measure.Instruments;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;

/** A reading of what came, with a tool of the job or the usual one; worked out by hand. */
class GaugingTest {
  private static final String NONE = "";

  private static OpenJob job(UnitSystem units) {
    MemoryLogbook logbook = new MemoryLogbook();
    logbook.append(
        Instant.EPOCH,
        JobOpened.of(
            "Test engine",
            1234567,
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.all(),
            units));
    return new OpenJob(logbook, Clock.systemUTC());
  }

  private static BuyLine line(String what, String step, Unit unit) {
    return new BuyLine(
        Article.read(what),
        GoodsSize.of(GoodsSize.Sense.UNDER, Amount.of(step, unit)),
        step,
        16,
        new SoldAs(16, 0),
        false,
        0,
        0,
        List.of(),
        "ground");
  }

  private static String judge(OpenJob job, BuyLine line, GoodsWay way, String... typed) {
    Gauging.Typed all = new Gauging.Typed(way, typed[0], typed[1], typed[2], typed[3]);
    Gauging.Outcome outcome = new Gauging(job.state(), line).judge(all);
    return outcome instanceof Gauging.Outcome.Judged judged
        ? judged.one().sentence()
        : ((Gauging.Outcome.Refused) outcome).sentence();
  }

  /**
   * The usual tool on a wall is off by 0.0002 in at most: its guard is 1.65 · 0.0002 / √3 = 0.00019
   * in, within 0.001 in. Metric it is 1.65 · 0.005 / √3 = 0.0048 mm, within 0.025 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "INCH, 0.0783, Right",
    "INCH, 0.0784, Undecided",
    "INCH, 0.0786, Undecided",
    "INCH, 0.0787, Wrong",
    "METRIC, 1.970, Right",
    "METRIC, 1.973, Undecided",
    "METRIC, 1.981, Wrong"
  })
  void aWallIsJudgedWithTheUsualTool(UnitSystem units, String reading, String ruling) {
    boolean inch = units == UnitSystem.INCH;
    BuyLine line =
        inch ? line("rod shells", "0.010", Unit.INCH) : line("rod shells", "0.25", Unit.MILLIMETRE);
    String standard = inch ? "0.0725" : "1.825";
    assertThat(judge(job(units), line, GoodsWay.WALL, reading, standard, NONE, NONE))
        .startsWith(ruling);
  }

  @Test
  void aToolThatIsTooCoarseForAnyAnswerIsRefused() {
    OpenJob job = job(UnitSystem.METRIC);
    new Instruments(job).list("slide", Dimension.LENGTH, "0.02", "0.03", "0.02");
    BuyLine line = line("rod shells", "0.25", Unit.MILLIMETRE);
    assertThat(judge(job, line, GoodsWay.WALL, "1.95", "1.825", NONE, "slide"))
        .isEqualTo("This tool is too coarse for that. Use a micrometer.");
    assertThat(judge(job, line, GoodsWay.WALL, "1.95", "1.825", "0.1", "slide"))
        .startsWith("Right");
  }

  /** A caliper has a guard of 0.00095 in. */
  @Test
  void aCaliperIsTheUsualToolBesidesAWall() {
    OpenJob job = job(UnitSystem.INCH);
    BuyLine line = line("pistons", "0.030", Unit.INCH);
    assertThat(judge(job, line, GoodsWay.DIAMETER, "3.900", "3.869", NONE, NONE))
        .startsWith("Right");
    assertThat(judge(job, line, GoodsWay.DIAMETER, "3.899", "3.869", "0.0009", NONE))
        .contains("too coarse");
    assertThat(judge(job, line, GoodsWay.DIAMETER, "3.899", "3.869", NONE, "lost"))
        .contains("no tool \"lost\"");
  }
}
