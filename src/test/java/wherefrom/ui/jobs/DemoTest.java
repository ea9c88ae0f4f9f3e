package wherefrom.ui.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.demo.DemoJob;
import wherefrom.inspection.Look;
import wherefrom.job.LogbookCondition;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.PlaceState;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.measure.Comparing;
import wherefrom.job.money.Budget;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.numbers.PlanBook;
import wherefrom.job.ports.CheckFinding;
import wherefrom.job.shop.MachineShop;
import wherefrom.logbook.FileChecks;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.PhotoFiles;
import wherefrom.ui.sample.SampleJob;

/** The demo: whole, part-way through, and never changed by working on it. */
class DemoTest {
  private static final Path ORIGINAL = Path.of("demo-data");

  @TempDir Path shelf;

  private static Map<String, List<Byte>> content(Path folder) throws IOException {
    Map<String, List<Byte>> content = new HashMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        List<Byte> bytes = new ArrayList<>();
        for (byte each : Files.readAllBytes(file)) {
          bytes.add(each);
        }
        content.put(folder.relativize(file).toString(), bytes);
      }
    }
    return content;
  }

  private OpenJob open(Path folder) {
    return new FileShelf(shelf, SampleJob.CLOCK, () -> 1).open(folder);
  }

  @Test
  void everyFileOfTheDemoIsOnItsListAndIsCopied() throws IOException {
    Map<String, List<Byte>> original = content(ORIGINAL);
    original.remove("files.txt");
    assertThat(content(DemoJob.on(shelf))).isEqualTo(original);
  }

  @Test
  void theDemoIsAWholeJobPartWayThrough() throws IOException {
    Path copy = DemoJob.on(shelf);
    assertThat(new FileChecks().check(copy))
        .extracting(CheckFinding::severity)
        .containsOnly(CheckFinding.Severity.SOUND);
    try (OpenJob job = open(copy)) {
      assertThat(job.condition()).isInstanceOf(LogbookCondition.Sound.class);
      assertThat(states(job))
          .contains(
              PlaceState.OUT,
              PlaceState.FITTED,
              PlaceState.WASHING,
              PlaceState.AT_SHOP,
              PlaceState.MISSING);
      assertThat(job.state().standingStop()).isPresent();
      assertThat(photographs(job)).isEqualTo(2).isLessThan(job.state().parts().size());
    }
  }

  /** A newcomer who looks round finds no empty screen. */
  @Test
  void everyScreenBetweenTheTwoDaysHasSomethingToShow() throws IOException {
    try (OpenJob job = open(DemoJob.on(shelf))) {
      assertThat(new Inspecting(job).listUnlooked()).isNotEmpty();
      assertThat(job.state().measures().all())
          .extracting(MeasuredResult::worst)
          .contains(Look.PASS, Look.SUSPECT, Look.FAIL);
      assertThat(new Comparing(job).compare("lobe-lift").orElseThrow().odd()).hasSize(1);
      assertThat(new Planning(job).plans()).hasSize(2);
      assertThat(new Planning(job).openChecks()).isNotEmpty();
      assertThat(new DebrisBook(job).map().openings()).isNotEmpty();
      assertThat(new Deciding(job).listUndecided()).isNotEmpty();
      assertThat(new Deciding(job).replacements()).hasSize(3);
      assertThat(new MachineShop(job).visits())
          .singleElement()
          .satisfies(visit -> assertThat(visit.missing()).isEqualTo(6));
      Budget budget = new MoneyBook(job).budget();
      assertThat(budget.left().cents()).isBetween(1L, budget.limit().cents() / 20);
      assertThat(new PlanBook(job).text(0, "bore")).isEqualTo("3.870in");
    }
  }

  private static List<PlaceState> states(OpenJob job) {
    return job.state().places().stream().map(job.state()::state).distinct().toList();
  }

  private static long photographs(OpenJob job) {
    return job.state().parts().stream()
        .flatMap(part -> part.remarks().stream())
        .filter(remark -> remark.photo().isPresent())
        .peek(
            remark ->
                assertThat(new PhotoFiles().locate(job.folder(), remark.photo().orElseThrow()))
                    .exists())
        .count();
  }

  @Test
  void workingOnItChangesTheCopyAlone() throws IOException {
    Map<String, List<Byte>> before = content(ORIGINAL);
    Path copy = DemoJob.on(shelf);
    try (OpenJob job = open(copy)) {
      job.record(new NoteAdded(0, "looked round"));
    }
    assertThat(content(ORIGINAL)).isEqualTo(before);
    assertThat(content(copy)).isNotEqualTo(before);
  }

  @Test
  void aSecondTapGoesOnWithTheSameCopy() throws IOException {
    Path copy = DemoJob.on(shelf);
    try (OpenJob job = open(copy)) {
      job.record(new NoteAdded(0, "looked round"));
    }
    Map<String, List<Byte>> worked = content(copy);
    assertThat(content(DemoJob.on(shelf))).isEqualTo(worked);
  }
}
