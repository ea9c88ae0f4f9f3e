package wherefrom.job.tags;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.Benches;
import wherefrom.job.LoggedEntry;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.print.TagChoice;
import wherefrom.job.print.TagPrinting;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.UnitSystem;

/** Kinds that a person wants to track later. */
class TrackingTest {
  private final MemoryLogbook logbook = new MemoryLogbook();
  private final OpenJob job = Benches.apartOn(logbook);

  private Tracking.Answer track(PartKind... kinds) {
    return new Tracking(job).track(List.of(kinds));
  }

  @Test
  void theirPlacesGetTheNextNumbersAndWhatEachStandsForIsLogged() {
    Tracking.Answer.Tracked tracked =
        (Tracking.Answer.Tracked) track(PartKind.VALVE, PartKind.SPRING);
    assertThat(tracked.first()).isEqualTo(75);
    assertThat(tracked.parts()).isEqualTo(32);
    assertThat(tracked.sentence())
        .isEqualTo("32 parts more (valve springs, valves), numbers 75 to 106. Print their tags.");
    LoggedEntry last = logbook.entries().get(logbook.entries().size() - 1);
    KindsTracked entry = (KindsTracked) last.entry();
    for (int at = 0; at < entry.items().size(); at++) {
      Part part = Benches.part(job, entry.items().get(at).key());
      assertThat(part.item()).isEqualTo(75 + at);
      assertThat(part.fresh()).isFalse();
      assertThat(job.state().whereabouts(part.item())).isEqualTo(Whereabouts.IN_ENGINE);
      String tag = part.code(Benches.ENGINE).digits();
      CodeLookup found = new TagBook(job.state(), Benches.NO_NAMES).find(tag);
      assertThat(found).isEqualTo(new CodeLookup.APart(job.state().getPart(part.item())));
    }
    assertThat(new OpenJob(logbook, Benches.CLOCK).state().parts())
        .containsExactlyElementsOf(job.state().parts());
  }

  @Test
  void kindsThatTheEngineHasNotAreNotOffered() {
    MemoryLogbook split = new MemoryLogbook();
    split.append(
        Benches.CLOCK.instant(),
        JobOpened.of(
            "Split case",
            Benches.ENGINE,
            ReadyLayouts.find("opposed-4").orElseThrow(),
            PartKind.alwaysOn(),
            UnitSystem.INCH));
    Tracking tracking = new Tracking(new OpenJob(split, Benches.CLOCK));
    assertThat(tracking.offered())
        .containsEntry(PartKind.CAM_BEARING, 3)
        .doesNotContainKeys(PartKind.MAIN_CAP, PartKind.PUSHROD);
    assertThat(tracking.track(List.of(PartKind.MAIN_CAP)))
        .isInstanceOf(Tracking.Answer.Refused.class);
  }

  /** Four digits stand on a tag: 9999 is the last. Five cam bearings need five of them. */
  @Test
  void theLastNumberIsUsedAndNoneBeyondIt() {
    int pushrod = Benches.part(job, "pushrod@3EX").item();
    job.record(new PartReplaced(pushrod, 9_995, "worn", Optional.empty(), PartSort.SAME));
    assertThat(track(PartKind.CAM_BEARING)).isInstanceOf(Tracking.Answer.Refused.class);
    job.undo();
    OpenJob other = Benches.apart();
    other.record(
        new PartReplaced(
            Benches.part(other, "pushrod@3EX").item(),
            9_994,
            "worn",
            Optional.empty(),
            PartSort.SAME));
    Tracking.Answer answer = new Tracking(other).track(List.of(PartKind.CAM_BEARING));
    assertThat(answer).isInstanceOf(Tracking.Answer.Tracked.class);
    assertThat(Benches.part(other, "cam-bearing@C5").item()).isEqualTo(9_999);
  }

  /** The tags of what was there before keep their meaning, place cards too. */
  @Test
  void noOtherNumberMoves() {
    List<PartRecord> before = new ArrayList<>(job.state().parts());
    List<wherefrom.engine.Spot> cards = job.state().cards();
    new Tracking(job).track(new Tracking(job).offered().keySet());
    assertThat(job.state().parts()).hasSize(188).containsAll(before);
    assertThat(job.state().cards()).isEqualTo(cards);
    assertThat(new Tracking(job).offered()).isEmpty();
  }

  /** A number that was given to a part that was taken back may hang on something. */
  @Test
  void numbersOfStepsTakenBackAreNotUsedAgain() {
    new Handling(job).replace(Benches.part(job, "pushrod@3EX").item(), "worn out");
    job.undo();
    assertThat(((Tracking.Answer.Tracked) track(PartKind.VALVE)).first()).isEqualTo(76);
    HandlingOutcome next =
        new Handling(job).replace(Benches.part(job, "pushrod@3EX").item(), "worn out");
    assertThat(((HandlingOutcome.Logged) next).part().part().item()).isEqualTo(92);
  }

  @Test
  void theirTagsAreOfferedForPrinting() {
    TagPrinting printing = new TagPrinting(job);
    printing.printed(printing.faces(new TagChoice.AllParts()), "a4");
    assertThat(printing.faces(new TagChoice.NotYetPrinted())).isEmpty();
    track(PartKind.VALVE);
    assertThat(printing.faces(new TagChoice.NotYetPrinted())).hasSize(16);
  }

  /** They come out with their stage, though their numbers are higher than those of the mains. */
  @Test
  void theyComeOutInTheOrderOfTakingApart() {
    OpenJob whole = Benches.fresh();
    new Tracking(whole).track(Set.of(PartKind.SPRING, PartKind.PIVOT));
    Set<PartKind> kinds = whole.state().kinds();
    List<Place> order =
        TakeApart.listInside(whole.state()).stream().map(it -> it.part().home()).toList();
    assertThat(order).isEqualTo(Places.of(whole.state().layout(), kinds));
    assertThat(whole.state().places()).containsExactlyElementsOf(order);
  }

  @Test
  void whatIsTrackedOrNotThereOrNotNamedIsRefused() {
    int entries = logbook.entries().size();
    assertThat(track(PartKind.PUSHROD, PartKind.VALVE))
        .isEqualTo(
            new Tracking.Answer.Refused("The pushrods are tracked already: leave them out."));
    assertThat(track()).isEqualTo(new Tracking.Answer.Refused("Name the kinds of part to track."));
    assertThat(logbook.entries()).hasSize(entries);
  }

  /** The form that was defined before anything wrote it. */
  @Test
  void anEntryThatDoesNotSayItsNumbersCountsOnByTheFirstNumbering() {
    job.record(new KindsTracked(Set.of(PartKind.VALVE, PartKind.PUSHROD), 0, List.of()));
    assertThat(Benches.part(job, "valve@1IN").item()).isEqualTo(75);
    assertThat(Benches.part(job, "valve@8EX").item()).isEqualTo(90);
    assertThat(job.nextItem()).isEqualTo(91);
  }
}
