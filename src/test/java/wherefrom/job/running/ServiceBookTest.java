package wherefrom.job.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wherefrom.engine.LifterType;
import wherefrom.inspection.Sources;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.running.ServiceBook.State;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;

class ServiceBookTest {
  private final OpenJob job = BenchJob.fewKinds().job;
  private final Serving serving = new Serving(job);

  private Map<String, State> states() {
    return serving.book().lines().stream()
        .collect(Collectors.toMap(line -> line.point().key(), ServiceBook.Line::state));
  }

  private State state(String point) {
    return states().getOrDefault(point, State.DONE);
  }

  private void miles(String miles) {
    serving.note(Amount.of(miles, Unit.MILE), "");
  }

  @Test
  void nothingIsDueBeforeItHasRun() {
    assertThat(states()).hasSize(7).values().containsOnly(State.LATER);
    new RunInBook(job).begin(RunInPlan.usual(LifterType.FLAT), "parts are out for the test");
    assertThat(states().values()).containsOnly(State.LATER);
  }

  @Test
  void afterTheRunInTheFirstPointsAreDueAndOverdueOnceItIsDriven() {
    RunInBook runs = new RunInBook(job);
    runs.begin(new RunInPlan(1_500, 2_500, 20, "sheet"), "for the test");
    runs.stop(RunInEnd.TIME_UP, "", Instant.parse("2026-01-02T03:24:05Z"), OptionalInt.empty());
    assertThat(state("oil")).isEqualTo(State.DUE);
    assertThat(state("oil-again")).isEqualTo(State.LATER);
    serving.tick("oil", "clean pleats", true);
    miles("3");
    assertThat(state("oil")).isEqualTo(State.DONE);
    assertThat(state("lash")).isEqualTo(State.OVERDUE);
    serving.tick("oil", "", false);
    assertThat(state("oil")).isEqualTo(State.OVERDUE);
  }

  private void runIn(int minutes) {
    RunInBook runs = new RunInBook(job);
    runs.begin(new RunInPlan(1_500, 2_500, minutes, "sheet"), "for the test");
    Instant end = Instant.parse("2026-01-02T03:04:05Z").plusSeconds(60L * minutes);
    runs.stop(RunInEnd.TIME_UP, "", end, OptionalInt.empty());
  }

  @Test
  void anotherRunInForgetsNothing() {
    runIn(20);
    serving.tick("oil", "clean pleats", true);
    new RunInBook(job).begin(RunInPlan.usual(LifterType.FLAT), "for the test");
    assertThat(state("levels")).isEqualTo(State.DUE);
    assertThat(serving.book().hasRunIn()).isTrue();
  }

  @Test
  void whatWasOnceInServiceStaysRunInWhenItsRecordOpens() {
    serving.putInService("");
    serving.tick("oil", "", true);
    serving.reopen("it smokes");
    assertThat(serving.book().hasRunIn()).isTrue();
    assertThat(state("oil")).isEqualTo(State.DONE);
    assertThat(state("levels")).isEqualTo(State.DUE);
  }

  /** 20 minutes are a third of an hour, which the hour meter shows before anybody drives. */
  @Test
  void theHoursOfTheRunInMakeNothingOverdue() {
    runIn(20);
    serving.note(Amount.of("0.3", Unit.HOUR), "");
    assertThat(state("oil")).isEqualTo(State.DUE);
    serving.note(Amount.of("0.4", Unit.HOUR), "");
    assertThat(state("oil")).isEqualTo(State.OVERDUE);
  }

  @Test
  void eachFigureKeepsItsSource() {
    serving.typeDue("oil-again", Amount.of("30", Unit.HOUR), "sheet of the oil");
    assertThat(oilAgain().source()).isEqualTo("sheet of the oil");
    serving.typeDue("oil-again", Amount.of("600", Unit.MILE), "the builder");
    assertThat(oilAgain().source().split("; "))
        .containsExactlyInAnyOrder("sheet of the oil", "the builder");
  }

  private ServiceBook.Line oilAgain() {
    return serving.book().lines().stream()
        .filter(line -> line.point() == ServicePoint.OIL_AGAIN)
        .findFirst()
        .orElseThrow();
  }

  /** Whichever of miles and hours comes first; due from nine tenths, overdue past the figure. */
  @Test
  void theSecondPointsFollowMilesAndHours() {
    miles("449");
    assertThat(state("oil-again")).isEqualTo(State.LATER);
    miles("450");
    assertThat(state("oil-again")).isEqualTo(State.DUE);
    miles("500");
    assertThat(state("oil-again")).isEqualTo(State.DUE);
    serving.note(Amount.of("20.1", Unit.HOUR), "");
    assertThat(state("oil-again")).isEqualTo(State.OVERDUE);
    assertThat(serving.book().count(State.OVERDUE)).isEqualTo(7);
  }

  @Test
  void theFigureOfThisEngineTakesTheUsualOnesPlace() {
    serving.typeDue("oil-again", Amount.of("400", Unit.KILOMETRE), "sheet of the oil");
    miles("248");
    assertThat(state("oil-again")).isEqualTo(State.DUE);
    miles("249");
    assertThat(state("oil-again")).isEqualTo(State.OVERDUE);
    assertThat(state("lash-again")).isEqualTo(State.LATER);
    Map<String, String> sources =
        serving.book().lines().stream()
            .collect(Collectors.toMap(line -> line.point().key(), ServiceBook.Line::source));
    assertThat(sources).containsEntry("oil-again", "sheet of the oil");
    assertThat(sources.get("lash-again")).startsWith(Sources.PRACTICE).contains("500 miles");
    assertThat(sources).containsEntry("oil", Sources.PRACTICE);
  }

  @Test
  void whatItHasRunNeverGrowsLessAndIsHoursOrDistance() {
    miles("100");
    assertThatThrownBy(() -> serving.note(Amount.of("160", Unit.KILOMETRE), ""))
        .hasMessageContaining("100 mi");
    serving.note(Amount.of("161", Unit.KILOMETRE), "");
    for (Amount wrong : new Amount[] {Amount.of("5", Unit.INCH), Amount.of("-1", Unit.HOUR)}) {
      assertThatThrownBy(() -> serving.note(wrong, "")).hasMessageContaining("hours");
    }
    assertThat(serving.book().findRun(Dimension.DISTANCE))
        .contains(Amount.of("161", Unit.KILOMETRE));
    assertThat(serving.book().findRun(Dimension.RUNNING_TIME)).isEmpty();
    assertThat(serving.book().uses()).hasSize(2);
  }

  @Test
  void whatIsNoPointOrHasNoSourceIsRefused() {
    long before = job.sequence();
    assertThatThrownBy(() -> serving.tick("wash", "", true)).hasMessageContaining("wash");
    assertThatThrownBy(() -> serving.typeDue("oil", Amount.of("1", Unit.HOUR), " "))
        .hasMessageContaining("comes from");
    assertThatThrownBy(() -> serving.reopen("x")).hasMessageContaining("open");
    assertThat(job.sequence()).isEqualTo(before);
  }

  @Test
  void inServiceItTakesNotesAndTicksAndOpensForAReason() {
    RunInBook runs = new RunInBook(job);
    runs.begin(RunInPlan.usual(LifterType.FLAT), "for the test");
    assertThatThrownBy(() -> serving.putInService("")).hasMessageContaining("Stop it first");
    runs.stop(RunInEnd.OTHER, "", Instant.parse("2026-01-02T03:05:05Z"), OptionalInt.empty());
    serving.putInService("in the truck");
    assertThat(state("oil")).isEqualTo(State.DUE);
    miles("12");
    serving.tick("oil", "", true);
    assertThatThrownBy(() -> serving.putInService("")).hasMessageContaining("already");
    assertThatThrownBy(() -> serving.reopen(" ")).hasMessageContaining("why");
    serving.reopen("it smokes");
    assertThat(job.state().service().since()).isEmpty();
  }
}
