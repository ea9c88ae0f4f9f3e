package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.TakenBack;
import wherefrom.logbook.LogbookFile;

/** A copy of a state goes its own way: what is done to one of them shows in the other nowhere. */
class StateCopyTest {
  /** What is worked out when it is asked for, and the readers that are the same for all. */
  private static final RecursiveComparisonConfiguration HELD =
      RecursiveComparisonConfiguration.builder()
          .withIgnoredFieldsOfTypes(WorkedOut.class, PlaceStates.class)
          .build();

  private static List<LoggedEntry> demo() {
    try (OpenJob demo = new OpenJob(LogbookFile.read(Path.of("demo-data")), Clock.systemUTC())) {
      return demo.history().stream()
          .filter(logged -> !(logged.entry() instanceof TakenBack))
          .toList();
    }
  }

  private static void requireSame(EngineJob one, EngineJob other, String where) {
    assertThat(one).as(where).usingRecursiveComparison(HELD).isEqualTo(other);
    assertThat(List.copyOf(one.places())).as(where).isEqualTo(List.copyOf(other.places()));
    assertThat(List.copyOf(one.parts())).as(where).isEqualTo(List.copyOf(other.parts()));
  }

  @Test
  void aCopyIsAsItsModelAndStaysSoWhateverTheModelTakesIn() {
    List<LoggedEntry> history = demo();
    assertThat(history).hasSizeGreaterThan(100);
    for (int at = 1; at < history.size(); at += 40) {
      EngineJob model = EngineJob.of(history.subList(0, at));
      EngineJob copy = model.copy();
      requireSame(copy, model, "copied at " + at);
      for (LoggedEntry next : history.subList(at, history.size())) {
        model = model.after(next);
      }
      requireSame(copy, EngineJob.of(history.subList(0, at)), "the model went on from " + at);
      for (LoggedEntry next : history.subList(at, history.size())) {
        copy = copy.after(next);
      }
      requireSame(copy, model, "both went on from " + at);
    }
  }

  @Test
  void afterEachLossTheStateIsWhatTheHistoryGives() {
    MemoryLogbook logbook = new MemoryLogbook();
    demo().forEach(one -> logbook.append(one.time(), one.entry()));
    OpenJob job = new OpenJob(logbook, Clock.systemUTC());
    List<LoggedEntry> before = new ArrayList<>(job.state().standing());
    List<Integer> tries = new ArrayList<>();
    job.inOne(
        () -> {
          tries.add(job.state().standing().size());
          if (tries.size() < 3) {
            logbook.append(Clock.systemUTC().instant(), new NoteAdded(0, "another bench"));
          }
          job.record(new NoteAdded(0, "this bench"));
        });
    assertThat(tries).containsExactly(before.size(), before.size() + 1, before.size() + 2);
    assertThat(job.state().standing()).hasSize(before.size() + 3);
    requireSame(job.state(), EngineJob.of(job.history()), "after two losses");
  }
}
