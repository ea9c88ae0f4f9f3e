package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.parts.Action;
import wherefrom.parts.Place;
import wherefrom.ui.sample.SampleJob;

/** A stop can be left without solving it: the part is laid away, or goes to another place. */
class OtherWaysTest {
  private final SampleJob sample = SampleJob.apart();
  private final PutTogetherModel model = new PutTogetherModel(sample.job);

  private void scan(String part, String spot) {
    model.scan(sample.read(sample.tag(part)));
    model.scan(sample.read(sample.card(spot)));
  }

  private Optional<Object> fitted(String part) {
    return sample.job.state().findFittedAt(sample.part(part).item()).map(place -> place);
  }

  @Test
  void thePartIsPutAwayAndNothingStands() {
    scan("pushrod@3EX", "5EX");
    assertThat(model.stop()).isPresent();
    model.leave(PutTogether::putAway);
    assertThat(model.stop()).isEmpty();
    assertThat(sample.job.state().stops().waiting()).isEmpty();
    assertThat(fitted("pushrod@3EX")).isEmpty();
    scan("pushrod@7EX", "7EX");
    assertThat(fitted("pushrod@7EX")).as("judged at its own place").isPresent();
  }

  /** A part of another kind has a place of its own as well. */
  @Test
  void theOwnPlaceOfAPartOfAnotherKindIsNamed() {
    scan("pushrod@3EX", "M1U");
    assertThat(model.stopped().ownPlace()).contains(Place.find("pushrod@3EX").orElseThrow());
    model.leave(PutTogether::otherPlace);
    model.scan(sample.read(sample.card("3EX")));
    assertThat(fitted("pushrod@3EX")).isPresent();
  }

  @Test
  void thePartStaysInTheHandForAnotherPlace() {
    scan("pushrod@3EX", "5EX");
    model.leave(PutTogether::otherPlace);
    assertThat(model.stop()).isEmpty();
    assertThat(model.halves()).hasValueSatisfying(due -> assertThat(due.hasPart()).isTrue());
    assertThat(model.here()).contains(Place.find("pushrod@3EX").orElseThrow());
    model.scan(sample.read(sample.card("3EX")));
    assertThat(fitted("pushrod@3EX")).isPresent();
  }

  /** The same scan once more is the same stop: one UNDO takes it back. */
  @Test
  void theSameScanIsOneStop() {
    scan("pushrod@3EX", "5EX");
    int entries = sample.job.history().size();
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(sample.job.history()).hasSize(entries);
    model.act(Action.UNDO);
    assertThat(model.stop()).isEmpty();
  }

  @Test
  void undoAfterHeldTurnedLeadsBackToTheRightPlace() {
    scan("pushrod@3EX", "3EX");
    long entries = sample.job.history().size();
    model.leave(PutTogether::turned);
    assertThat(model.stop()).isPresent();
    assertThat(fitted("pushrod@3EX")).isEmpty();
    model.act(Action.UNDO);
    assertThat(model.stop()).isEmpty();
    assertThat(model.right()).isPresent();
    assertThat(fitted("pushrod@3EX")).isPresent();
    assertThat(sample.job.history().size()).isGreaterThan((int) entries);
    model.act(Action.UNDO);
    assertThat(fitted("pushrod@3EX")).isEmpty();
  }
}
