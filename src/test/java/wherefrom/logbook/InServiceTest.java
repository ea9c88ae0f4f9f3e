package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import wherefrom.job.InService;
import wherefrom.job.LogbookException;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.TakenBack;
import wherefrom.job.entry.UsageNoted;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/** What a job takes whose engine is in service: one row for each kind of entry. */
class InServiceTest {
  private static final Path TABLE =
      Path.of("src", "test", "resources", "wherefrom", "job", "in-service.txt");
  private static final UsageNoted USAGE = new UsageNoted(Amount.of("35", Unit.MILE), "");

  private final MemoryLogbook logbook = new MemoryLogbook();
  private final OpenJob job;

  InServiceTest() {
    logbook.append(Clock.systemUTC().instant(), EveryEntry.all().get(0));
    job = new OpenJob(logbook, Clock.systemUTC());
    job.record(new NoteAdded(0, "ready"));
    job.record(new PutInService(""));
  }

  private void refused(JobEntry entry) {
    long last = job.sequence();
    assertThatThrownBy(() -> job.record(entry))
        .as("%s", entry)
        .isInstanceOf(LogbookException.class)
        .hasMessage(InService.CLOSED);
    assertThat(job.sequence()).isEqualTo(last);
  }

  @Test
  void eachKindIsTakenOrRefusedAsTheTableSays() throws IOException {
    Map<String, String> seen = new TreeMap<>();
    for (JobEntry entry : EveryEntry.all()) {
      if (!(entry instanceof TakenBack)) {
        seen.put(EntryTypes.of(entry), takes(entry) ? "taken" : "refused");
      }
    }
    seen.put("taken-back", takes(new TakenBack(2)) ? "taken" : "refused");
    List<String> rows =
        seen.entrySet().stream().map(it -> it.getKey() + ": " + it.getValue()).toList();
    assertThat(Files.readAllLines(TABLE)).filteredOn(line -> !line.startsWith("#")).isEqualTo(rows);
  }

  /** Whether a job that has just been put in service takes it; what is taken is in its logbook. */
  private static boolean takes(JobEntry entry) {
    InServiceTest fresh = new InServiceTest();
    long last = fresh.job.sequence();
    try {
      fresh.job.record(entry);
    } catch (LogbookException e) {
      assertThat(e).hasMessage(InService.CLOSED);
      assertThat(fresh.logbook.entries()).hasSize((int) last);
      return false;
    }
    assertThat(fresh.logbook.entries()).hasSize((int) last + 1);
    return true;
  }

  @Test
  void anActIsRefusedWholeWhereOnePartOfItIs() {
    assertThatThrownBy(
            () ->
                job.asOne(
                    () -> {
                      job.record(USAGE);
                      return job.record(new NoteAdded(0, "more"));
                    }))
        .hasMessage(InService.CLOSED);
    assertThat(job.history()).noneMatch(logged -> logged.entry() instanceof UsageNoted);
    refused(new Act(List.of(USAGE, USAGE)));
  }

  @Test
  void whatWasNotedSinceIsUndoneAndSoIsTheClosingButNothingBefore() {
    long noted = job.record(USAGE).sequence();
    refused(new TakenBack(2));
    job.record(new TakenBack(noted));
    job.undo();
    assertThat(job.state().service().since()).isEmpty();
    job.record(new NoteAdded(0, "open again by undo"));
  }

  @Test
  void openedAgainItTakesEverythingAndCanBePutInServiceOnceMore() {
    job.record(new RecordReopened("it smokes"));
    assertThat(job.state().service().since()).isEmpty();
    job.record(new NoteAdded(0, "valve seal"));
    job.record(new PutInService("seal renewed"));
    refused(new NoteAdded(0, "late"));
    job.record(new PhotoAdded(1, "0".repeat(64) + ".png", "on the road"));
    OpenJob again = new OpenJob(logbook, Clock.systemUTC());
    assertThat(again.state().service().since()).isEqualTo(job.state().service().since());
    assertThat(again.state().service().since()).isPresent();
  }
}
