package wherefrom.ui.tray;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.job.tray.PictureMark;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.ui.sample.SampleJob;

class TrayModelTest {
  private final SampleJob sample = SampleJob.whole();

  private Reading reading(String... places) {
    List<Sighting> sightings = new ArrayList<>();
    for (String place : places) {
      sightings.add(new Sighting(sample.tag(place), Sighting.Basis.ISSUED, List.of()));
    }
    return new Reading(sightings, List.of(new Unread(Unread.Cause.GLARE, List.of())));
  }

  private TrayModel model(TrayPurpose purpose, Reading reading) {
    return new TrayModel(sample.job, SampleJob.NAMES, reading, purpose);
  }

  @Test
  void whatWillBeLoggedIsShownBeforeAndIsLoggedByOnePress() {
    TrayModel model = model(TrayPurpose.OUT, reading("pushrod@3EX", "pushrod@4IN"));
    assertThat(model.headline())
        .isEqualTo("2 parts to log as out. 1 tag not read: the broken lines.");
    assertThat(model.findLogWords()).contains("Log 2 parts as out");
    assertThat(model.lines()).hasSize(3);
    int before = sample.job.history().size();
    assertThat(model.log()).isEqualTo(Cue.RIGHT);
    assertThat(sample.job.history()).hasSize(before + 2);
    assertThat(where("pushrod@3EX")).isEqualTo(Whereabouts.OUT);
    assertThat(model.findLogWords()).isEmpty();
    assertThat(model.headline()).startsWith("2 parts logged as out.");
  }

  @Test
  void anUndoBringsBackOnePartAndTheKeyForIt() {
    TrayModel model = model(TrayPurpose.OUT, reading("pushrod@3EX", "pushrod@4IN"));
    model.log();
    sample.job.undo();
    model.changed();
    assertThat(where("pushrod@3EX")).isEqualTo(Whereabouts.OUT);
    assertThat(where("pushrod@4IN")).isEqualTo(Whereabouts.IN_ENGINE);
    assertThat(model.findLogWords()).contains("Log 1 part as out");
  }

  @Test
  void aTagThatWasReadTwiceCountsOnce() {
    TrayModel model = model(TrayPurpose.OUT, reading("pushrod@3EX", "pushrod@3EX"));
    assertThat(model.findLogWords()).contains("Log 1 part as out");
  }

  @Test
  void aCheckTellsWhatLiesHereWrongAndWhatOfTheseKindsIsWanted() {
    model(TrayPurpose.OUT, reading("pushrod@3EX", "pushrod@5IN", "lifter@3EX")).log();
    TrayModel check = model(TrayPurpose.CHECK, reading("pushrod@3EX", "pushrod@4IN"));
    assertThat(check.headline()).startsWith("As recorded: 1. Elsewhere: 1. Out, not here: 1.");
    assertThat(check.lines())
        .extracting(TrayModel.Line::words)
        .startsWith("here, recorded as in the engine", "out, not here")
        .endsWith("as recorded", "1 lifter");
    assertThat(check.findLogWords()).isEmpty();
  }

  @Test
  void aTrayOfOneKindAgreesThoughOtherKindsAreOut() {
    model(TrayPurpose.OUT, reading("pushrod@3EX", "lifter@3EX")).log();
    assertThat(model(TrayPurpose.CHECK, reading("pushrod@3EX")).headline())
        .startsWith("As recorded: all 1, and no other of these kinds is out.");
  }

  @Test
  void otherCodesAreNamedAndNothingIsLoggedForThem() {
    String other = new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits();
    Reading reading =
        new Reading(List.of(new Sighting(other, Sighting.Basis.DECODED, List.of())), List.of());
    TrayModel model = model(TrayPurpose.OUT, reading);
    assertThat(model.headline()).isEqualTo("No part's tag was read on this picture.");
    assertThat(model.lines()).extracting(TrayModel.Line::heading).containsExactly("Another code");
  }

  @Test
  void everyTagIsMarkedAndWhatWasNotReadDiffers() {
    assertThat(model(TrayPurpose.OUT, reading("pushrod@3EX")).marks())
        .extracting(PictureMark::words, PictureMark::read)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("3 EX pushrod", true),
            org.assertj.core.groups.Tuple.tuple("?", false));
  }

  private Whereabouts where(String place) {
    return sample.job.state().whereabouts(sample.part(place).item());
  }
}
