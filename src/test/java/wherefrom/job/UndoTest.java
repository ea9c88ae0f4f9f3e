package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.print.TagChoice;
import wherefrom.job.print.TagPrinting;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.job.tags.Tracking;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.rules.Verdict;

/** UNDO takes the last step back or says why not; it never takes another one unsaid. */
class UndoTest {
  private final MemoryLogbook logbook = new MemoryLogbook();
  private final OpenJob job = Benches.apartOn(logbook);
  private final Part part = Benches.part(job, "pushrod@3EX");

  private Undone.Kept kept() {
    return (Undone.Kept) job.undo();
  }

  private void note(String text) {
    new Handling(job).note(part.item(), text);
  }

  @Test
  void aReprintIsNotTakenBackAndNeitherIsTheStepBeforeIt() {
    note("polished tip");
    new Handling(job).reissue(part.item(), "tag torn");
    int entries = logbook.entries().size();
    assertThat(job.findLastStep()).isEmpty();
    assertThat(kept().sentence())
        .startsWith("Not undone: tag of ")
        .contains("printed again, issue 2 (tag torn). A new tag may exist.")
        .contains("UNDO again undoes the step before: note on ");
    assertThat(logbook.entries()).hasSize(entries);
    assertThat(job.state().getPart(part.item()).remarks()).hasSize(1);
  }

  @Test
  void askedAgainItTakesTheStepBeforeAndTheReprintStays() {
    note("polished tip");
    new Handling(job).reissue(part.item(), "tag torn");
    kept();
    assertThat(job.findLastStep().orElseThrow().entry()).isInstanceOf(NoteAdded.class);
    assertThat(job.undo().sentence()).startsWith("Undone: note on ");
    assertThat(job.state().getPart(part.item()).remarks()).isEmpty();
    assertThat(job.state().getPart(part.item()).part().issue()).isEqualTo(2);
    assertThat(kept().before()).contains("came out");
  }

  /** Somebody worked on meanwhile: the next UNDO is no answer to what was told before. */
  @Test
  void askedAgainAfterOtherWorkItTellsAnew() {
    note("one");
    new Handling(job).reissue(part.item(), "tag torn");
    kept();
    new Handling(job).reissue(part.item(), "tag torn again");
    assertThat(kept().why()).contains("issue 3");
    note("two");
    assertThat(job.undo().sentence()).contains("two");
  }

  @Test
  void whatWasPrintedAndWhatIsTrackedStays() {
    TagPrinting printing = new TagPrinting(job);
    printing.printed(printing.faces(new TagChoice.OfKind(PartKind.PUSHROD)), "a4");
    assertThat(kept().why()).isEqualTo("Not undone: 16 part tags printed. What is printed exists.");
    new Tracking(job).track(List.of(PartKind.VALVE));
    assertThat(kept().why()).isEqualTo("Not undone: tracked too: valves. Their tags may exist.");
  }

  @Test
  void whereNothingBeforeItCanBeTakenBackNothingIsLeft() {
    OpenJob fresh = Benches.fresh();
    TagPrinting printing = new TagPrinting(fresh);
    printing.printed(printing.faces(new TagChoice.AllParts()), "a4");
    assertThat(fresh.undo()).isEqualTo(new Undone.NothingLeft());
    assertThat(fresh.undo()).isEqualTo(new Undone.NothingLeft());
  }

  /** A stop that was solved, and a question, are answers of the program: no step of anybody. */
  @Test
  void anAnsweredQuestionIsNoStep() {
    note("polished tip");
    new TakeApart(job).out(Benches.read(job, "1234567890123456"));
    assertThat(job.undo().sentence()).startsWith("Undone: note on ");
  }

  /**
   * The tag of a new part was printed anew, then the new part is taken back: the job still opens.
   */
  @Test
  void aReprintOfAPartThatIsTakenBackStandsForNothing() {
    HandlingOutcome replaced = new Handling(job).replace(part.item(), "worn out");
    int fresh = ((HandlingOutcome.Logged) replaced).part().part().item();
    new Handling(job).reissue(fresh, "tag torn");
    assertThat(job.undoBefore()).isInstanceOf(Undone.TookBack.class);
    assertThat(job.state().findPart(fresh)).isEmpty();
    OpenJob again = new OpenJob(logbook, Benches.CLOCK);
    assertThat(again.state().standing()).anyMatch(it -> it.entry() instanceof TagReissued);
    for (int issue = 1; issue <= 2; issue++) {
      String tag = new Part(fresh, part.home(), issue, 1, true).code(Benches.ENGINE).digits();
      CodeLookup found = new TagBook(again.state(), Benches.NO_NAMES).find(tag);
      assertThat(((CodeLookup.Refused) found).verdict().word()).isEqualTo("not one of ours");
    }
    assertThat(again.nextItem()).isEqualTo(fresh + 1);
  }

  @Test
  void theActionCardSaysTheSame() {
    new Handling(job).reissue(part.item(), "tag torn");
    PutTogether work = new PutTogether(job);
    FitOutcome told = work.act(wherefrom.parts.Action.UNDO);
    assertThat(((FitOutcome.Said) told).sentence()).contains("A new tag may exist.");
    FitOutcome took = work.act(wherefrom.parts.Action.UNDO);
    assertThat(((FitOutcome.TookBack) took).sentence()).contains("came out");
  }

  /** A stop goes before all else, whatever was printed since. */
  @Test
  void aStopThatStandsIsTakenBackThroughAReprint() {
    PutTogether work = new PutTogether(job);
    work.scan(Benches.read(job, Benches.tag(job, "pushrod@3EX")));
    work.tap(Benches.spot("5EX"));
    assertThat(work.stop().orElseThrow()).matches(Verdict::stops);
    new Handling(job).reissue(Benches.part(job, "pushrod@7EX").item(), "tag torn");
    work.act(wherefrom.parts.Action.UNDO);
    assertThat(job.state().standingStop()).isEmpty();
  }
}
