package wherefrom.ui.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Photographs by touch: of a cam lobe from the bench map, of a part for a test card. */
class PhotosFlowTest {
  private static final Subject LOBE = new Subject.AFeature(Feature.LOBE, "3EX");

  @TempDir Path shop;

  private final SampleJob sample = SampleJob.apart();
  private SampleWindow window;

  @BeforeEach
  void openTheWindow() {
    window =
        Toolkit.on(
            () ->
                new SampleWindow(
                    96,
                    100,
                    Optional.empty(),
                    work -> work.run(),
                    services ->
                        services.settings = services.settings.withShop(shop).withLastSaved(shop)));
  }

  private void at(ScreenId screen) throws IOException {
    Files.write(shop.resolve("nose.png"), new byte[] {1});
    in(
        open -> {
          open.shell.context().open(sample.job);
          open.shell.context().navigator().show(screen);
        });
  }

  private void in(Consumer<SampleWindow> work) {
    Toolkit.on(
        () -> {
          work.accept(window);
          window.layOut();
          return 0;
        });
  }

  private void press(String... words) {
    for (String each : words) {
      in(open -> open.pressOnSomePage(each));
    }
  }

  private String words() {
    return Toolkit.on(() -> window.words());
  }

  @Test
  void aCamLobeIsPhotographedFromTheBenchMap() throws IOException {
    at(ScreenId.BENCH_MAP);
    press(
        "Photos",
        "Cam lobe",
        "cylinder 3",
        "3 EX",
        "Add a photograph",
        "From a picture file",
        "nose.png");
    assertThat(words()).contains("The photograph is kept with cylinder 3, exhaust, cam lobe.");
    assertThat(Photograph.listOf(sample.job.state(), LOBE))
        .extracting(Photograph::file)
        .containsExactly("photo-of-nose.png");
  }

  @Test
  void aPhotographFromATestCardStaysWithTheCard() throws IOException {
    at(ScreenId.INSPECT);
    press("Cam lobe", "cylinder 3", "3 EX", "Photo", "From a picture file", "nose.png");
    assertThat(words()).contains("The photograph is kept with cylinder 3, exhaust, cam lobe.");
    Photograph kept = Photograph.listOf(sample.job.state(), LOBE).get(0);
    assertThat(kept.check()).isEqualTo("lobe-look");
  }

  @Test
  void oneIsShownLargeWithItsStoryAndTheNextIsAPressAway() throws IOException {
    Photographing photos = new Photographing(sample.job);
    photos.add(Optional.of(LOBE), "", "one.png", "the nose");
    photos.add(Optional.of(LOBE), "", "gone.png", "the heel");
    at(ScreenId.BENCH_MAP);
    press("Photos", "Cam lobe", "cylinder 3", "3 EX");
    in(
        open ->
            open.shell
                .context()
                .navigator()
                .open(
                    () ->
                        new PhotoScreen(
                            open.shell.context(),
                            () -> Photograph.listOf(sample.job.state(), LOBE),
                            0)));
    assertThat(words())
        .contains("Photograph 1 of 2", "cam lobe: the nose. 4 May 2026, today.")
        .doesNotContain("not in the job's folder");
    press("Next");
    assertThat(words())
        .contains("Photograph 2 of 2", "the heel", "gone from the job's folder. Bring it");
    press("Before");
    assertThat(words()).contains("Photograph 1 of 2");
  }

  @Test
  void aPhotographTakenBackIsGoneFromTheLargeViewToo() throws IOException {
    new Photographing(sample.job).add(Optional.of(LOBE), "", "one.png", "the nose");
    at(ScreenId.BENCH_MAP);
    in(
        open ->
            open.shell
                .context()
                .navigator()
                .open(
                    () ->
                        new PhotoScreen(
                            open.shell.context(),
                            () -> Photograph.listOf(sample.job.state(), LOBE),
                            0)));
    press("UNDO");
    assertThat(words()).contains("There is no photograph here any more.");
  }
}
