package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Spot;
import wherefrom.inspection.Subject;
import wherefrom.inspection.match.PartMatch;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.handling.Handling;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.MoneyCsv;
import wherefrom.job.numbers.Bearings;
import wherefrom.job.numbers.ClearanceLimits;
import wherefrom.job.numbers.ClearanceLimits.Field;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.print.Face;
import wherefrom.job.print.TagChoice;
import wherefrom.job.print.TagPrinting;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.shop.Retagging;
import wherefrom.job.shop.Washing;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.Article;

/**
 * One act is one entry: all of it or nothing is there after a power cut, and one UNDO gives the
 * state before it. Each use case that says several things at once has its case here.
 */
class OneActTest {
  private static final Place AT_3 = Benches.place("pushrod@3EX");
  private static final Place AT_5 = Benches.place("pushrod@5EX");

  private final MemoryLogbook logbook = new MemoryLogbook();
  private final OpenJob job = Benches.apartOn(logbook);

  private static Spot spot(String key) {
    return Benches.spot(key);
  }

  private Part part(String place) {
    return Benches.part(job, place);
  }

  /** What the state is, as far as acts of this test change it. */
  private List<Object> seen() {
    return List.of(
        job.state().fitted(),
        job.state().parts().stream().toList(),
        job.state().onPurpose().stream().toList(),
        new MoneyBook(job).lines(),
        new MoneyBook(job).prices(),
        new MoneyBook(job).findTender());
  }

  /** Does it, then: one entry more on disk, and one UNDO is as if it had not been. */
  private void assertOneAct(Runnable deed) {
    List<Object> before = seen();
    int entries = logbook.entries().size();
    deed.run();
    assertThat(seen()).as("the deed did nothing").isNotEqualTo(before);
    assertThat(logbook.entries()).hasSize(entries + 1);
    assertThat(EngineJob.of(logbook.entries()).fitted()).isEqualTo(job.state().fitted());
    assertThat(job.undo()).isInstanceOf(Undone.TookBack.class);
    assertThat(seen()).isEqualTo(before);
    assertThat(logbook.entries()).hasSize(entries + 2);
  }

  @Test
  void fittingOnPurposeOverAFittedPart() {
    Fitting fitting = new Fitting(job);
    fitting.fit(part("pushrod@3EX"), spot("3EX"), false);
    assertOneAct(() -> fitting.fitOnPurpose(part("pushrod@5EX"), spot("3EX"), "no other left"));
    assertThat(job.state().findFitted(AT_3)).contains(part("pushrod@3EX"));
    fitting.fitOnPurpose(part("pushrod@5EX"), spot("3EX"), "no other left");
    assertThat(job.state().findFitted(AT_3)).contains(part("pushrod@5EX"));
    assertThat(job.state().whereabouts(part("pushrod@3EX").item())).isEqualTo(Whereabouts.OUT);
    assertThat(EntryWords.of(job.state(), job.findLastStep().orElseThrow().entry()))
        .contains(
            "taken out again (made room for another part); ",
            "fitted at",
            "on purpose (no other left)");
  }

  @Test
  void takingOutWhatStandsInTheWayOfThePartThatBelongsThere() {
    Fitting fitting = new Fitting(job);
    fitting.fitOnPurpose(part("pushrod@5EX"), spot("3EX"), "no other left");
    PutTogether work = new PutTogether(job);
    work.scan(Benches.read(job, Benches.tag(job, "pushrod@3EX")));
    work.tap(spot("3EX"));
    assertThat(work.stop()).isPresent();
    int entries = logbook.entries().size();
    work.tookOut();
    assertThat(logbook.entries()).hasSize(entries + 1);
    assertThat(job.state().findFitted(AT_3)).contains(part("pushrod@3EX"));
    job.undo();
    assertThat(job.state().findFitted(AT_3)).contains(part("pushrod@5EX"));
    assertThat(job.state().standingStop()).isPresent();
  }

  /** The stop is solved alone: scanning it away must not put the part back that was taken out. */
  @Test
  void aStopThatComesOfTakingOutIsAnEntryOfItsOwn() {
    Fitting fitting = new Fitting(job);
    fitting.fit(part("pushrod@3EX"), spot("3EX"), false);
    PutTogether work = new PutTogether(job);
    work.scan(Benches.read(job, Benches.tag(job, "pushrod@5EX")));
    work.tap(spot("3EX"));
    work.tookOut();
    List<LoggedEntry> entries = logbook.entries();
    assertThat(entries.get(entries.size() - 2).entry()).isInstanceOf(PartUnfitted.class);
    assertThat(entries.get(entries.size() - 1).entry()).isInstanceOf(StopGiven.class);
    job.stops().takeBack();
    assertThat(job.state().findFitted(AT_3)).isEmpty();
  }

  /** Whatever was logged since, it is the fit that is taken back. */
  @Test
  void aPartThatWentInTurnedTakesItsOwnFitBack() {
    PutTogether work = new PutTogether(job);
    work.scan(Benches.read(job, Benches.tag(job, "pushrod@3EX")));
    work.tap(spot("3EX"));
    job.record(new NoteAdded(0, "on another screen"));
    work.turned();
    assertThat(job.state().findFitted(AT_3)).isEmpty();
    assertThat(job.state().standing())
        .anyMatch(it -> it.entry().equals(new NoteAdded(0, "on another screen")));
  }

  @Test
  void retagging() {
    Instruments tools = new Instruments(job);
    tools.list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
    int item = part("pushrod@3EX").item();
    new Measuring(job)
        .take(
            new Measuring.Entry(
                Subject.ofPart(item),
                "pushrod-length",
                "caliper",
                Map.of("length", List.of("7.9000")),
                false,
                ""));
    new Handling(job).offForWashing(item, 2);
    Retagging retagging = new Retagging(job);
    Retagging.Answer proposed =
        retagging.propose(List.of(item), "pushrod-length", "caliper", Map.of("A", "7.9000"));
    PartMatch match = ((Retagging.Answer.Proposed) proposed).matches().get(0);
    assertOneAct(
        () ->
            assertThat(retagging.accept(match, item))
                .isInstanceOf(Retagging.Answer.Accepted.class));
    assertThat(job.state().getPart(item).part().issue()).isEqualTo(1);
    retagging.accept(match, item);
    assertThat(job.state().getPart(item).where()).isEqualTo(Whereabouts.OUT);
    assertThat(job.state().getPart(item).part().issue()).as("issue 2 may be printed").isEqualTo(3);
  }

  @Test
  void aBasketCountedBack() {
    for (String key : List.of("pushrod@3EX", "pushrod@5EX", "lifter@1IN")) {
      new Handling(job).offForWashing(part(key).item(), 2);
    }
    assertOneAct(() -> new Washing(job).backByCount(2, 3, Optional.of(true)));
    assertThat(new Washing(job).findBasket(2).orElseThrow().pieces()).isEqualTo(3);
  }

  @Test
  void theFirstAmountWithItsCurrency() {
    MoneyBook book = new MoneyBook(job);
    assertOneAct(
        () ->
            book.begin(
                Locale.US, () -> book.note(0, "boring", "", CostState.QUOTED, "240", 0, "")));
    assertOneAct(
        () -> book.begin(Locale.US, () -> book.setPrice(Article.read("lifters"), "12.50")));
  }

  @Test
  void clearanceLimitsThatBeginToJudge() {
    ClearanceLimits.set(job, Bearings.MAINS, Field.LOWER, "0.0010in");
    ClearanceLimits.set(job, Bearings.MAINS, Field.UPPER, "0.0025in");
    int entries = logbook.entries().size();
    assertThat(ClearanceLimits.set(job, Bearings.MAINS, Field.SOURCE, "manual, page 6-12"))
        .isInstanceOf(FigureOutcome.Done.class);
    assertThat(logbook.entries()).hasSize(entries + 1);
    job.undo();
    assertThat(ClearanceLimits.of(job, Bearings.MAINS).source()).isEmpty();
    assertThat(ClearanceLimits.of(job, Bearings.MAINS).lower()).isPresent();
  }

  @Test
  void anAmountThatIsRefusedKeepsNoCurrencyEither() {
    MoneyBook book = new MoneyBook(job);
    int entries = logbook.entries().size();
    assertThat(book.begin(Locale.US, () -> book.note(0, "", "", CostState.PAID, "1", 0, "")))
        .isInstanceOf(MoneyBook.Answer.Refused.class);
    assertThat(logbook.entries()).hasSize(entries);
    assertThat(book.findTender()).isEmpty();
  }

  @Test
  void aTableOfCosts() {
    String table = "what,about,state,amount,note\nboring,,quoted,240,\nrings,,paid,38.50,set\n";
    assertOneAct(() -> assertThat(new MoneyCsv(job).read(table)).isEmpty());
  }

  @Test
  void tagsOfSeveralSortsPrintedAtOnce() {
    TagPrinting printing = new TagPrinting(job);
    List<Face> faces = new java.util.ArrayList<>(printing.faces(new TagChoice.AllParts()));
    faces.addAll(printing.faces(new TagChoice.PlaceCards()));
    int entries = logbook.entries().size();
    printing.printed(faces, "a4");
    assertThat(logbook.entries()).hasSize(entries + 1);
    assertThat(logbook.entries().get(entries).entry().canBeTakenBack()).isFalse();
    assertThat(printing.faces(new TagChoice.NotYetPrinted())).isEmpty();
  }

  /** What fails half-way, in the deed or on the disk, leaves nothing behind. */
  @Test
  void aDeedThatFailsLeavesTheStateAndTheLogbookAsTheyWere() {
    List<Object> before = seen();
    int entries = logbook.entries().size();
    assertThatThrownBy(
            () ->
                job.asOne(
                    () -> {
                      job.record(new PartFitted(part("pushrod@3EX").item(), AT_3));
                      assertThat(job.state().findFitted(AT_3)).isPresent();
                      throw new IllegalStateException("half-way");
                    }))
        .hasMessage("half-way");
    assertThat(seen()).isEqualTo(before);
    assertThat(logbook.entries()).hasSize(entries);
    job.record(new NoteAdded(0, "work goes on"));
    assertThat(logbook.entries()).hasSize(entries + 1);
  }

  @Test
  void aDiskThatFailsAtTheEndLeavesTheStateAsItWas() {
    OpenJob failing = new OpenJob(failing(logbook), Benches.CLOCK);
    List<Part> fitted = List.copyOf(failing.state().fitted().values());
    int history = failing.history().size();
    assertThatThrownBy(
            () -> new Fitting(failing).fitOnPurpose(part("pushrod@5EX"), spot("3EX"), "no other"))
        .isInstanceOf(LogbookException.class);
    assertThat(List.copyOf(failing.state().fitted().values())).isEqualTo(fitted);
    assertThat(failing.history()).hasSize(history);
  }

  @Test
  void anActWithinAnActIsPartOfIt() {
    int entries = logbook.entries().size();
    job.asOne(
        () -> {
          new Fitting(job).fit(part("pushrod@3EX"), spot("3EX"), false);
          return new Fitting(job).fitOnPurpose(part("pushrod@5EX"), spot("3EX"), "no other");
        });
    assertThat(logbook.entries()).hasSize(entries + 1);
    assertThat(((Act) logbook.entries().get(entries).entry()).entries()).hasSize(3);
    assertThat(job.state().findFitted(AT_3)).contains(part("pushrod@5EX"));
    assertThat(job.state().findFitted(AT_5)).isEmpty();
  }

  @Test
  void anActIsMadeOfTwoEntriesOrMoreAndOfNoAct() {
    JobEntry out = new PartOut(1);
    assertThat(Act.of(List.of(out))).isSameAs(out);
    assertThatThrownBy(() -> new Act(List.of(out))).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Act(List.of(out, new Act(List.of(out, out)))))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void thePartsOfAnActAreThoseOfItsEntries() {
    JobEntry act = new Act(List.of(new PartOut(3), new NoteAdded(5, "x"), new PartOut(3)));
    assertThat(EntryItems.of(act)).containsExactly(3, 5);
    assertThat(EntryItems.of(job.history().get(0).entry())).isEmpty();
  }

  /** A logbook whose disk is full. */
  private static Logbook failing(Logbook kept) {
    return new LogbookBeside(kept) {
      @Override
      public Appended append(long expected, NewEntry entry) {
        throw new LogbookException("The disk is full.");
      }
    };
  }
}
