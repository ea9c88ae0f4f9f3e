package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.handling.Handling;
import wherefrom.ui.sample.PaperLogbook;
import wherefrom.ui.sample.PaperLogbook.Away;
import wherefrom.ui.sample.SampleJob;

/** An act whose answer was lost is told to who sent it, whoever asked first what became of it. */
class SettledOnceTest {
  private final SampleJob sample = SampleJob.whole();
  private final PaperLogbook logbook = sample.logbook;
  private final OpenJob job = sample.job;

  private void note(String text) {
    new Handling(job).note(1, text);
  }

  /** The store goes while the act is judged. */
  private UnsentException lost(String text, Away how) {
    Runnable deed =
        () -> {
          logbook.away(how);
          note(text);
        };
    UnsentException said = catchThrowableOfType(UnsentException.class, () -> job.inOne(deed));
    logbook.away(Away.NO);
    return said;
  }

  private List<String> notes() {
    return logbook.entries().stream()
        .filter(logged -> logged.entry() instanceof NoteAdded)
        .map(logged -> ((NoteAdded) logged.entry()).text())
        .toList();
  }

  @Test
  void theSameActSentAgainUnaskedIsNotWrittenTwice() {
    lost("one", Away.UNHEARD);
    assertThatThrownBy(() -> note("one"))
        .isInstanceOf(LogbookException.class)
        .hasMessage("The step before was kept after all. Look at it, then do this again.");
    assertThat(notes()).containsExactly("one");
    assertThat(job.history().get(job.history().size() - 1).entry())
        .as("it is seen by now")
        .isEqualTo(new NoteAdded(1, "one"));
  }

  /** Else whoever sent it would hear that it was not written, and do it again. */
  @Test
  void whoSentItHearsThatItIsWrittenThoughAnotherActCameBetween() {
    UnsentException said = lost("one", Away.UNHEARD);
    assertThatThrownBy(() -> note("two")).isInstanceOf(LogbookException.class);
    note("two");
    assertThat(job.settle(said).map(LoggedEntry::entry)).contains(new NoteAdded(1, "one"));
    assertThat(job.settle(said)).as("told once").isEmpty();
    assertThat(notes()).containsExactly("one", "two");
  }

  @Test
  void whatAnotherActBecameIsNotTakenForIt() {
    UnsentException one = lost("one", Away.UNSENT);
    UnsentException two = lost("two", Away.UNHEARD);
    assertThat(job.settle(one)).as("two was written under its number").isEmpty();
    assertThat(job.settle(two).map(LoggedEntry::entry)).contains(new NoteAdded(1, "two"));
    note("one");
    assertThat(notes()).containsExactly("two", "one");
  }

  /** The store refuses the second under the number of the first, which came late. */
  @Test
  void whatWasRefusedForItsSakeLeavesTheFirstUnsettled() {
    UnsentException said = lost("one", Away.UNSENT);
    logbook.fail("It was kept before the connection broke.");
    assertThatThrownBy(() -> note("two")).isInstanceOf(LogbookException.class);
    logbook.fail("");
    assertThat(job.isUnsettled()).isTrue();
    assertThat(job.settle(said)).isEmpty();
    note("one");
    assertThat(notes()).containsExactly("one");
  }
}
