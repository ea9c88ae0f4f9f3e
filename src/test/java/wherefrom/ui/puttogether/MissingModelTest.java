package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.parts.Place;
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
    assertThat(model.trouble()).isEqualTo("Not finished: 10 missing.");
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
}
