package wherefrom.ui.subject;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.settings.Appearance;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Whatever is listed is found: on the drawing, or on a key below it. */
class MixedIndexTest {
  private final SampleJob sample = SampleJob.apart();
  private final List<Subject> opened = new ArrayList<>();

  private final Subject pushrod = Subject.ofPart(sample.part("pushrod@3EX").item());
  private final Subject shell = Subject.ofPart(sample.part("main-shell@M1L").item());
  private final Subject lobe = feature(Feature.LOBE);
  private final Subject deck = feature(Feature.DECK);

  private Subject feature(Feature feature) {
    return new Subject.AFeature(feature, feature.where(sample.job.state().layout()).get(0));
  }

  private MixedIndex index(List<Subject> all) {
    return Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(Glass.TABLET, 100, Appearance.LIGHT);
          window.shell.context().open(sample.job);
          return new MixedIndex(
              window.shell.context(),
              "Suspect or failed",
              () -> all,
              one -> one.equals(shell) ? PartState.OUT.failed() : PartState.OUT.suspect(),
              opened::add);
        });
  }

  /** It has neither a zone nor a figure where all kinds are drawn. */
  @Test
  void whatTurnsInsideTheBlockHasAKey() {
    Subject journal = feature(Feature.CAM_JOURNAL);
    MixedIndex index = index(List.of(pushrod, journal));
    assertThat(index.places()).containsExactly(home("pushrod@3EX"));
    assertThat(index.besides())
        .extracting(KeyRow.Act::words)
        .containsExactly("Cam journal 1: out, suspect");
    index.besides().forEach(act -> act.run().run());
    assertThat(opened).containsExactly(journal);
  }

  /** What is judged while its page is open has no key there any more. */
  @Test
  void theKeysBelowAreAskedAnewWhenThePageComesUp() {
    List<Subject> listed = new ArrayList<>(List.of(pushrod, deck));
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(Glass.TABLET, 100, Appearance.LIGHT);
          ScreenContext context = window.shell.context();
          context.open(sample.job);
          MixedIndex index =
              new MixedIndex(
                  context, "Suspect", () -> listed, one -> PartState.OUT.suspect(), opened::add);
          new EnginePages(context, index).open(View.ABOVE);
          window.layOut();
          String key = index.besides().get(0).words();
          assertThat(window.words()).contains(key);
          listed.remove(deck);
          context.navigator().changed();
          window.layOut();
          assertThat(window.words()).doesNotContain(key);
          return window;
        });
  }

  private Place home(String part) {
    return sample.part(part).home();
  }

  @Test
  void partsAndFeaturesAreDrawnAndBanksHaveKeys() {
    MixedIndex index = index(List.of(pushrod, shell, lobe, deck));
    assertThat(index.places())
        .contains(home("pushrod@3EX"), home("main-shell@M1L"))
        .hasSize(3)
        .anyMatch(place -> place.kind() == PartKind.LIFTER);
    assertThat(index.besides()).hasSize(1);
    index.besides().forEach(act -> act.run().run());
    assertThat(opened).containsExactly(deck);
    assertThat(index.besides()).extracting(KeyRow.Act::words).allMatch(words -> !words.isBlank());
  }

  @Test
  void eachShowsHowItStandsAndATapOpensIt() {
    MixedIndex index = index(List.of(pushrod, shell));
    assertThat(index.states().apply(home("main-shell@M1L"))).isEqualTo(PartState.OUT.failed());
    assertThat(index.states().apply(home("pushrod@3EX"))).isEqualTo(PartState.OUT.suspect());
    assertThat(index.states().apply(home("pushrod@1IN")))
        .as("it is not listed, and is out like all of them")
        .isEqualTo(PartState.OUT);
    index.open(home("pushrod@3EX"));
    assertThat(opened).containsExactly(pushrod);
  }

  @Test
  void theSideWithTheMostComesUpFirst() {
    assertThat(index(List.of(pushrod, lobe, shell)).side()).isEqualTo(View.ABOVE);
    assertThat(index(List.of(shell)).side()).isEqualTo(View.BELOW);
    assertThat(index(List.of(pushrod, lobe, shell)).aside(View.BELOW))
        .isEqualTo("1 of 3 on this side");
  }
}
