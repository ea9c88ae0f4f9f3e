package wherefrom.job.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.engine.LifterType;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.entry.SectionClosed;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;

/** An engine that was in service and comes apart again. */
class NextLifeTest {
  private final OpenJob job = BenchJob.v8().job;
  private final Serving serving = new Serving(job);

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  private Part owner(String key) {
    return job.state().findOwner(place(key)).orElseThrow();
  }

  private int replace(String key, String thousandths, String sort) {
    int fresh = job.nextItem();
    Optional<Amount> size =
        thousandths.isEmpty() ? Optional.empty() : Optional.of(Amount.of(thousandths, Unit.INCH));
    job.record(new PartReplaced(owner(key).item(), fresh, "worn", size, PartSort.of(sort)));
    return fresh;
  }

  /** Everything goes in where it is at home, and the engine is put in service. */
  private void fitAll() {
    job.state().places().stream()
        .toList()
        .forEach(
            at -> job.record(new PartFitted(job.state().findOwner(at).orElseThrow().item(), at)));
    serving.putInService("");
  }

  private void again() {
    fitAll();
    serving.comesApartAgain("it smokes");
  }

  @Test
  void everyPartIsInWhereItSatUnderItsNumber() {
    int old = owner("pushrod@3EX").item();
    int fresh = replace("pushrod@3EX", "", "");
    again();
    assertThat(job.state().fitted()).isEmpty();
    assertThat(owner("pushrod@3EX").item()).isEqualTo(fresh);
    assertThat(owner("pushrod@3EX").fresh()).isFalse();
    assertThat(job.state().whereabouts(fresh)).isEqualTo(Whereabouts.IN_ENGINE);
    assertThat(job.state().whereabouts(old)).isEqualTo(Whereabouts.RETIRED);
    assertThat(job.state().service().since()).isEmpty();
    job.record(new PartOut(fresh));
    assertThat(job.state().whereabouts(fresh)).isEqualTo(Whereabouts.OUT);
    assertThat(job.nextItem()).isGreaterThan(fresh);
  }

  @Test
  void whatSatInAnothersPlaceIsAtHomeThereNow() {
    int one = owner("pushrod@1EX").item();
    int other = owner("pushrod@3EX").item();
    for (Place at : job.state().places().stream().toList()) {
      int item = job.state().findOwner(at).orElseThrow().item();
      int sits = item == one ? other : item == other ? one : item;
      job.record(new PartFitted(sits, at, "swapped", Optional.of(VerdictName.WRONG_PLACE)));
    }
    serving.putInService("");
    serving.comesApartAgain("it smokes");
    assertThat(owner("pushrod@1EX").item()).isEqualTo(other);
    assertThat(job.state().onPurpose()).isEmpty();
  }

  @Test
  void whatWasFoundAndDecidedIsPastAndWhatWasWrittenStays() {
    int item = owner("pushrod@3EX").item();
    job.record(new LookRecorded(item, "pushrod-roll", Look.FAIL, ""));
    job.record(new DecisionMade(item, Decision.REUSE, "straightened"));
    job.record(new NoteAdded(item, "a nick"));
    job.record(new SectionClosed("mains"));
    again();
    assertThat(job.state().getPart(item).looks()).isEmpty();
    assertThat(job.state().getPart(item).decision()).isEmpty();
    assertThat(job.state().getPart(item).remarks()).hasSize(1);
    assertThat(job.state().closedSections()).isEmpty();
    assertThat(job.state().inspection().isBegun()).isFalse();
  }

  @Test
  void aSurfaceThatWasCutStaysCutAndTheCutBansNothingAnyMore() {
    new Planning(job)
        .make(ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in", Unit.INCH));
    replace("rod-shell@R2L", "0.010", "");
    again();
    assertThat(job.state().findBan(owner("rod-shell@R2L").item())).isEmpty();
    assertThat(new Planning(job).made()).isEmpty();
    int standard = replace("rod-shell@R2L", "0", "");
    assertThat(job.state().findBan(standard)).isPresent();
    int under = replace("rod-shell@R2L", "0.010", "");
    assertThat(job.state().findBan(under)).isEmpty();
  }

  @Test
  void anEngineThatWasTurnedToRollersHasRollersNow() {
    new Planning(job).make(ChangeText.read(ChangeKind.FLAT_TO_ROLLER, "", "", Unit.INCH));
    again();
    assertThat(job.state().layout().lifters()).isEqualTo(LifterType.ROLLER);
    assertThat(new RunInBook(job).lifters()).isEqualTo(LifterType.ROLLER);
  }

  @Test
  void undoLeadsBackIntoServiceWithEverythingAsItWas() {
    int fresh = replace("pushrod@3EX", "", "");
    again();
    job.undo();
    assertThat(job.state().service().since()).isPresent();
    assertThat(job.state().whereabouts(fresh)).isEqualTo(Whereabouts.FITTED);
    job.undo();
    assertThat(job.state().service().since()).isEmpty();
  }

  @Test
  void itIsRefusedOutOfServiceWithoutReasonAndWhereAPartTookAnothersPlace() {
    assertThatThrownBy(() -> serving.comesApartAgain("x")).hasMessageContaining("in service");
    int one = owner("pushrod@1EX").item();
    job.record(
        new PartFitted(
            one, place("pushrod@3EX"), "short of one", Optional.of(VerdictName.WRONG_PLACE)));
    serving.putInService("");
    assertThatThrownBy(() -> serving.comesApartAgain(" ")).hasMessageContaining("why");
    assertThatThrownBy(() -> serving.comesApartAgain("x"))
        .hasMessageContaining("sits in the place");
    assertThat(List.of(job.state().service().since())).noneMatch(Optional::isEmpty);
  }

  @Test
  void aThirdLifeKnowsWhatWasCutInTheFirst() {
    new Planning(job)
        .make(ChangeText.read(ChangeKind.MAIN_JOURNALS_GROUND, "", "0.010 in", Unit.INCH));
    for (Place at : job.state().places().stream().toList()) {
      if (at.key().startsWith("main-shell@")) {
        replace(at.key(), "0.010", "");
      }
    }
    again();
    serving.putInService("");
    serving.comesApartAgain("again");
    int standard = replace("main-shell@M2L", "0", "");
    assertThat(job.state().findBan(standard)).isPresent();
  }
}
