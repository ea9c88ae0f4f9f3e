package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.Part;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** Two benches at one job. */
class SeveralBenchesTest {
  private final MemoryLogbook logbook = new MemoryLogbook();
  private final OpenJob first = Benches.apartOn(logbook);
  private final OpenJob second = first.beside(new By(2, "Ann"));
  private final Part part = Benches.part(first, "pushrod@3EX");

  private static VerdictName fit(OpenJob job, String part, String spot) {
    return new Fitting(job).fit(Benches.part(job, part), Benches.spot(spot), false).name();
  }

  private List<String> notes(OpenJob job) {
    return job.state().getPart(part.item()).remarks().stream().map(Remark::text).toList();
  }

  private static PutTogether scan(OpenJob job, String part, String spot) {
    PutTogether work = new PutTogether(job);
    work.scan(Benches.read(job, Benches.tag(job, part)));
    work.scan(Benches.read(job, Benches.card(job, spot)));
    return work;
  }

  @Test
  void anEntrySaysItsBenchAndWho() {
    new Handling(second).note(part.item(), "chipped");
    first.catchUp();
    LoggedEntry last = first.history().get(first.history().size() - 1);
    assertThat(last.by()).isEqualTo(new By(2, "Ann"));
    assertThat(first.history()).isEqualTo(second.history());
  }

  @Test
  void whatWasRightBeforeIsAStopOnceAnotherBenchWasFirst() {
    assertThat(new Fitting(second).judge(part, Benches.spot("3EX"), false).stops()).isFalse();
    assertThat(fit(first, "pushrod@5EX", "3EX")).isEqualTo(VerdictName.WRONG_PLACE);
    new Fitting(first).fitOnPurpose(Benches.part(first, "pushrod@5EX"), Benches.spot("3EX"), "so");
    assertThat(fit(second, "pushrod@3EX", "3EX")).isEqualTo(VerdictName.PLACE_TAKEN);
    first.catchUp();
    assertThat(first.history()).isEqualTo(second.history());
  }

  @Test
  void aFactThatWasNotJudgedWithinAnActIsRefusedWhereAnotherWasFirst() {
    first.record(new NoteAdded(part.item(), "one"));
    assertThatThrownBy(() -> second.record(new NoteAdded(part.item(), "two")))
        .isInstanceOf(LogbookException.class)
        .hasMessage("Another bench was first. Do it again.");
    second.record(new NoteAdded(part.item(), "two"));
    assertThat(logbook.entries()).hasSize((int) second.sequence());
  }

  @Test
  void numbersAreHandedOutOnce() {
    List<Integer> items = new ArrayList<>();
    List<Integer> visits = new ArrayList<>();
    List<Integer> plans = new ArrayList<>();
    Change change = Change.of(ChangeKind.HOT_TANKED);
    for (OpenJob job : List.of(first, second, first, second)) {
      Part old = Benches.part(job, "pushrod@" + (1 + items.size()) + "EX");
      new Handling(job).replace(old.item(), "worn out");
      items.add(Benches.part(job, "pushrod@" + (1 + items.size()) + "EX").item());
      Part goes = Benches.part(job, "rocker@" + (1 + visits.size()) + "IN");
      MachineShop.Answer sent =
          new MachineShop(job).send(MachineShop.NEW_VISIT, Set.of(goes.item()), "look");
      visits.add(((MachineShop.Answer.Done) sent).visit().number());
      plans.add(((Planning.Answer.Planned) new Planning(job).plan(change)).plan().number());
    }
    assertThat(items).isEqualTo(IntStream.rangeClosed(75, 78).boxed().toList());
    assertThat(visits).containsExactly(1, 2, 3, 4);
    assertThat(plans).containsExactly(1, 2, 3, 4);
  }

  @Test
  void undoTakesBackThisBenchsLastStep() {
    new Handling(first).note(part.item(), "of the first");
    new Handling(second).note(part.item(), "of the second");
    assertThat(first.undo().sentence()).contains("of the first");
    second.catchUp();
    assertThat(notes(second)).containsExactly("of the second");
    assertThat(second.findLastStep().map(LoggedEntry::entry))
        .contains(new NoteAdded(part.item(), "of the second"));
  }

  @Test
  void aStopStandsAtItsBenchAndIsSeenByAll() {
    scan(first, "pushrod@3EX", "5EX");
    second.catchUp();
    assertThat(second.state().stops().waiting()).hasSize(1);
    assertThat(second.stops().findWaiting()).isEmpty();
    assertThat(new PutTogether(second).stop()).isEmpty();
    assertThat(new PutTogether(second).waiting()).isEqualTo(1);
    assertThat(first.stops().findWaiting().map(StopGiven::item)).contains(part.item());
    assertThat(second.stops().takeBack()).isEmpty();
    assertThat(fit(second, "pushrod@3EX", "3EX")).isEqualTo(VerdictName.RIGHT_PLACE);
    first.catchUp();
    assertThat(first.stops().findWaiting()).as("its part is in, at whatever bench").isEmpty();
  }

  @Test
  void aTagThatStoodForNoPartIsAnsweredAtItsOwnBench() {
    PutTogether work = new PutTogether(first);
    String other = new TagCode(TagType.PART, Benches.ENGINE + 1, 7, 1).digits();
    work.scan(Benches.read(first, other));
    assertThat(first.stops().findWaiting()).isPresent();
    fit(second, "pushrod@3EX", "3EX");
    first.catchUp();
    assertThat(first.stops().findWaiting()).isPresent();
    fit(first, "pushrod@5EX", "5EX");
    assertThat(first.stops().findWaiting()).isEmpty();
  }

  @Test
  void aStepThatAnotherBenchBuiltOnIsTakenBackAndBothFoldTheSame() {
    fit(first, "pushrod@3EX", "3EX");
    second.catchUp();
    new Handling(second).note(part.item(), "seen");
    first.undo();
    second.catchUp();
    assertThat(second.state().fitted()).isEmpty();
    assertThat(second.state().standing()).isEqualTo(first.state().standing());
  }

  @Test
  void aDeedThatDoesNotCountWithinAnotherLeavesNothing() {
    long before = first.sequence();
    first.inOne(
        () -> {
          first.record(new NoteAdded(part.item(), "kept"));
          first.asOne(() -> first.record(new NoteAdded(part.item(), "dropped")), done -> false);
        });
    assertThat(first.sequence()).isEqualTo(before + 1);
    assertThat(notes(first)).containsExactly("kept");
  }
}
