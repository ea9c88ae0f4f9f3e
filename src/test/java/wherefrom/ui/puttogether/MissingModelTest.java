package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.PartOut;
import wherefrom.job.handling.NewPart;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.sample.SampleJob;

class MissingModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final MissingModel model = new MissingModel(sample.job);

  @Test
  void aSectionClosesOnlyAtZero() {
    MissingModel.SectionLine mains =
        model.sections().stream()
            .filter(line -> line.section().key().equals("mains"))
            .findFirst()
            .orElseThrow();
    assertThat(mains.open()).hasSize(10);
    model.close(mains.section());
    assertThat(model.trouble()).isEqualTo("Not finished: 10 to fit.");
    mains.open().forEach(place -> model.excuse(place, "comes later"));
    model.close(mains.section());
    assertThat(model.trouble()).isEmpty();
    assertThat(sample.job.state().closedSections()).containsExactly("mains");
  }

  @Test
  void partsInEachOthersPlacesShowTheWayOut() {
    onPurpose("pushrod@1EX", "3EX");
    onPurpose("pushrod@3EX", "5EX");
    onPurpose("pushrod@5EX", "1EX");
    assertThat(model.cycles()).hasSize(1);
    assertThat(model.cycles().get(0).closed()).isTrue();
    assertThat(model.cycles().get(0).moves()).hasSize(3);
    model.cycles().get(0).moves().forEach(model::takeOut);
    assertThat(model.cycles()).isEmpty();
  }

  private void onPurpose(String part, String spot) {
    PutTogetherModel together = new PutTogetherModel(sample.job);
    together.scan(sample.read(sample.tag(part)));
    together.scan(sample.read(sample.card(spot)));
    together.chooseReason("matched pair");
    together.fitOnPurpose();
  }

  @Test
  void anOpenPlaceNamesThePartThatIsWanted() {
    Place place = Place.find("pushrod@3EX").orElseThrow();
    String typed = sample.part("pushrod@3EX").code(SampleJob.ENGINE).typed();
    assertThat(model.words(place)).isEqualTo("Part " + typed + ": out");
  }

  /**
   * Where a rod sits that is another's, its own cap is wanted: the same as its verdict asks for.
   */
  @Test
  void besideAPartFromElsewhereItsMateIsWanted() {
    SampleJob all = SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class));
    List<Integer> items = all.job.state().parts().stream().map(part -> part.part().item()).toList();
    items.forEach(item -> all.job.record(new PartOut(item)));
    new Fitting(all.job).fitOnPurpose(all.part("rod@R5U"), all.spot("R3U"), "better here");
    String typed = all.part("rod-cap@R5L").code(SampleJob.ENGINE).typed();
    Place cap = Place.find("rod-cap@R3L").orElseThrow();
    FitOutcome next = new FitOutcome.Next(cap);
    assertThat(new MissingModel(all.job).words(cap)).startsWith("Part " + typed);
    assertThat(Answers.of(all.job.state(), next).small()).contains(typed);
    assertThat(Halves.of(all.job, FitMode.FOLLOW_THE_LIST, next).part().large()).contains(typed);
    int named = all.part("rod-cap@R5L").item();
    MissingModel after = new MissingModel(all.job);
    after.replace(after.rightful(cap).orElseThrow(), "worn", NewPart.LIKE_THE_OLD);
    assertThat(all.job.state().whereabouts(named)).isEqualTo(Whereabouts.RETIRED);
    assertThat(all.record("rod-cap@R3L").where()).isEqualTo(Whereabouts.OUT);
  }
}
