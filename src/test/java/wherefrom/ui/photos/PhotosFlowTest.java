package wherefrom.ui.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.job.photos.Photos;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.logbook.PhotoFiles;
import wherefrom.parts.Place;
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
    openTheWindow(Optional.empty());
  }

  private void openTheWindow(Optional<Photos> photos) {
    window =
        Toolkit.on(
            () ->
                new SampleWindow(
                    96,
                    100,
                    Optional.empty(),
                    work -> work.run(),
                    services -> {
                      services.settings = services.settings.withShop(shop).withLastSaved(shop);
                      services.ownPhotos = photos;
                    }));
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

  /** How far it is; a message takes its place on the glass. */
  private String aside() {
    return Toolkit.on(() -> window.shell.current().aside());
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

  private void pictures(String... names) throws IOException {
    for (String name : names) {
      Files.write(shop.resolve(name), new byte[] {1});
    }
  }

  private void scan(String digits) {
    in(open -> open.scan(digits));
  }

  private List<String> shows(Photograph photo) {
    return List.of(photo.file(), photo.words(sample.job.state()));
  }

  /** Choose, skip, scan: each picture of a folder that shows no tag. */
  @Test
  void photographsWithoutATagAreOfferedOneByOne() throws IOException {
    pictures("a.png", "b.png", "c.png");
    at(ScreenId.PHOTOGRAPHS);
    press("Read a folder…", "Choose this folder");
    assertThat(words()).contains("Which part or place is it?", "1 of 4");
    press("Choose what it shows", "Cam lobe", "cylinder 3", "3 EX");
    assertThat(words()).contains("kept with cylinder 3, exhaust, cam lobe.");
    assertThat(aside()).isEqualTo("2 of 4");
    press("Skip");
    scan(sample.tag("pushrod@5IN"));
    assertThat(words()).contains("kept with cylinder 5, intake, pushrod.");
    assertThat(aside()).isEqualTo("4 of 4");
    press("Later");
    assertThat(words()).contains("1 photograph not filed yet. Read the folder again to go on.");
    assertThat(Photograph.listAll(sample.job.state()))
        .map(this::shows)
        .containsExactly(
            List.of("photo-of-a.png", "cylinder 3, exhaust, cam lobe"),
            List.of("photo-of-c.png", "cylinder 5, intake, pushrod"));
    press("Read a folder…", "Choose this folder");
    assertThat(words()).as("what is kept is not asked again").contains("2 kept before.");
    assertThat(aside()).isEqualTo("1 of 2");
  }

  @Test
  void undoAsksAgainAndAllCanGoWithTheWholeEngine() throws IOException {
    pictures("a.png", "b.png");
    at(ScreenId.PHOTOGRAPHS);
    press("Read a folder…", "Choose this folder");
    scan(sample.card("5EX"));
    press("5 EX pushrod");
    assertThat(aside()).isEqualTo("2 of 3");
    press("UNDO");
    assertThat(aside()).isEqualTo("1 of 3");
    assertThat(Photograph.listAll(sample.job.state())).isEmpty();
    press("Choose what it shows", "The whole engine all 3");
    assertThat(Photograph.listAll(sample.job.state()))
        .map(photo -> photo.words(sample.job.state()))
        .containsExactly("the whole engine", "the whole engine", "the whole engine");
    assertThat(Toolkit.on(() -> window.shell.current())).isInstanceOf(PhotosScreen.class);
  }

  /** On the photographs of the lobe the lobe stands first. */
  @Test
  void picturesThatAreDroppedOnPhotographsAreFiledThere() throws IOException {
    at(ScreenId.BENCH_MAP);
    press("Photos", "Cam lobe", "cylinder 3", "3 EX");
    in(open -> open.shell.pictures().read(List.of(shop.resolve("nose.png"))));
    press("Choose what it shows", "3 EX cam lobe");
    assertThat(Photograph.listOf(sample.job.state(), LOBE)).hasSize(1);
  }

  /** Elsewhere several pictures may be scans or photographs. */
  @Test
  void ofSeveralPicturesThatAreDroppedThePersonSaysWhatTheyAre() throws IOException {
    pictures("a.png");
    at(ScreenId.JOB_HOME);
    in(
        open ->
            open.shell.pictures().read(List.of(shop.resolve("a.png"), shop.resolve("nose.png"))));
    press("Keep them");
    assertThat(words()).contains("Which part or place is it?", "1 of 2");
  }

  @Test
  void aPictureThatShowsATagIsFiledUnderItsPart() throws IOException {
    at(ScreenId.PHOTOGRAPHS);
    in(
        open -> {
          open.services.reading =
              new Reading(
                  List.of(
                      new Sighting(sample.tag("pushrod@3EX"), Sighting.Basis.DECODED, List.of())),
                  List.of());
          open.shell.pictures().read(List.of(shop));
        });
    assertThat(words()).contains("1 photograph kept with parts.");
    assertThat(Photograph.listAll(sample.job.state()))
        .map(this::shows)
        .containsExactly(List.of("photo-of-nose.png", "cylinder 3, exhaust, pushrod"));
  }

  /** At fitting the place as it was is one press away, before and after the part is in. */
  @Test
  void thePhotographOfBeforeIsOnePressAwayAtFitting() throws IOException {
    Subject rocker = Subject.ofPart(sample.part("rocker@3EX").item());
    new Photographing(sample.job).add(Optional.of(rocker), "", "before.png", "as it sat");
    at(ScreenId.PUT_TOGETHER);
    assertThat(words()).doesNotContain("Photo before");
    scan(sample.tag("rocker@3EX"));
    press("Photo before");
    assertThat(words()).contains("Cylinder 3, exhaust, rocker: as it sat.");
    press("Back");
    scan(sample.card("3EX"));
    assertThat(words()).contains("RIGHT PLACE");
    press("Photo before");
    assertThat(words()).contains("as it sat");
  }

  /** Said where a picture is chosen, in the help, and of each file that is one. */
  @Test
  void ofHeicPicturesTheWindowSaysWhatToDo() throws IOException {
    byte[] heic = "\0\0\0\u0018ftypheic\0\0\0\0".getBytes(StandardCharsets.ISO_8859_1);
    Files.write(shop.resolve("phone.heic"), heic);
    openTheWindow(Optional.of(new PhotoFiles()));
    at(ScreenId.PHOTOGRAPHS);
    Files.delete(shop.resolve("nose.png"));
    press("Add a photograph");
    assertThat(words()).contains("not HEIC");
    press("From a picture file", "phone.heic");
    assertThat(words()).contains("phone.heic is a HEIC picture. Set the phone's camera to JPEG");
    press("Read a folder…", "Choose this folder");
    assertThat(words()).contains("Left: phone.heic is a HEIC picture.");
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
        .contains("Photograph 2 of 2", "the heel", "Its file is gone. Take it from the job's copy");
    press("Previous");
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
    press("UNDO");
    assertThat(words()).contains("There is no photograph here any more.");
  }

  /** What is slow stays undone until the test lets it go on. */
  private final List<Runnable> held = new ArrayList<>();

  private void hold() {
    in(open -> open.workers = held::add);
  }

  private void goOn() {
    List<Runnable> now = List.copyOf(held);
    held.clear();
    in(open -> now.forEach(Runnable::run));
  }

  @Test
  void whileOneIsBeingKeptNoAnswerCounts() throws IOException {
    pictures("a.png", "b.png");
    at(ScreenId.PHOTOGRAPHS);
    press("Read a folder…", "Choose this folder");
    hold();
    scan(sample.tag("pushrod@5IN"));
    scan(sample.tag("pushrod@3EX"));
    assertThat(words()).contains("still being kept");
    press("Skip");
    press("Choose what it shows");
    press("UNDO");
    press("Later");
    assertThat(aside()).isEqualTo("1 of 3");
    goOn();
    goOn();
    assertThat(aside()).isEqualTo("2 of 3");
    assertThat(Photograph.listAll(sample.job.state()))
        .map(this::shows)
        .containsExactly(List.of("photo-of-a.png", "cylinder 5, intake, pushrod"));
  }

  @Test
  void whereOneCannotBeKeptItIsAskedAboutAgain() throws IOException {
    at(ScreenId.PHOTOGRAPHS);
    press("Read a folder…", "Choose this folder");
    Files.delete(shop.resolve("nose.png"));
    sample.logbook.fail("The disk is full. Make room, then scan again.");
    scan(sample.tag("pushrod@5IN"));
    assertThat(words()).contains("The disk is full.");
    assertThat(aside()).isEqualTo("1 of 1");
    sample.logbook.fail("");
    scan(sample.tag("pushrod@5IN"));
    assertThat(words()).contains("kept with cylinder 5, intake, pushrod.");
  }

  @Test
  void whoHasGoneOnToAnotherScreenStaysThere() throws IOException {
    at(ScreenId.PHOTOGRAPHS);
    press("Read a folder…", "Choose this folder");
    hold();
    scan(sample.tag("pushrod@5IN"));
    in(open -> open.shell.context().navigator().show(ScreenId.BENCH_MAP));
    goOn();
    assertThat(Toolkit.on(() -> window.shell.current().title())).startsWith("Bench");
    assertThat(Photograph.listAll(sample.job.state())).hasSize(1);
    in(open -> open.shell.context().navigator().back());
    goOn();
    scan(sample.tag("pushrod@3EX"));
    assertThat(words()).contains("None is left to ask about.");
  }

  @Test
  void theQuestionDoesNotComeUpOverAnotherScreen() throws IOException {
    at(ScreenId.PHOTOGRAPHS);
    hold();
    press("Read a folder…", "Choose this folder");
    in(open -> open.shell.context().navigator().show(ScreenId.TAKE_APART));
    goOn();
    assertThat(Toolkit.on(() -> window.shell.current().title())).isEqualTo("Take apart");
    assertThat(words()).contains("1 photograph shows no tag: read them again in Photographs.");
  }

  @Test
  void photographsOfAJobThatIsPutAwayAreNotKeptWithAnother() throws IOException {
    at(ScreenId.PHOTOGRAPHS);
    hold();
    press("Read a folder…", "Choose this folder");
    SampleJob other = SampleJob.apart();
    in(open -> open.shell.context().open(other.job));
    goOn();
    goOn();
    assertThat(words()).contains("The photographs were not kept: their job was put away.");
    assertThat(Photograph.listAll(other.job.state())).isEmpty();
    hold();
    in(open -> open.shell.pictures().read(List.of(shop)));
    press("Keep them");
    in(open -> open.shell.context().navigator().jobs());
    goOn();
    goOn();
    assertThat(words()).contains("The photographs were not kept: their job was put away.");
  }

  /** A window of another size makes its screens anew: what was answered stays answered. */
  @Test
  void whatWasBegunIsGoneOnWithInOtherLetters() throws IOException {
    pictures("a.png", "b.png");
    at(ScreenId.PHOTOGRAPHS);
    press("Read a folder…", "Choose this folder");
    scan(sample.tag("pushrod@5IN"));
    press("Skip");
    assertThat(aside()).isEqualTo("3 of 3");
    press("Choose what it shows");
    in(open -> open.shell.rescale());
    press("The whole engine");
    assertThat(Photograph.listAll(sample.job.state()))
        .map(photo -> photo.file())
        .containsExactly("photo-of-a.png", "photo-of-nose.png");
    assertThat(Toolkit.on(() -> window.shell.current())).isInstanceOf(PhotosScreen.class);
  }

  @Test
  void anAnswerDoesNotGoIntoAJobThatWasOpenedMeanwhile() throws IOException {
    at(ScreenId.PHOTOGRAPHS);
    press("Read a folder…", "Choose this folder");
    hold();
    scan(sample.tag("pushrod@5IN"));
    SampleJob other = SampleJob.apart();
    in(open -> open.shell.context().open(other.job));
    goOn();
    goOn();
    assertThat(words()).contains("The photographs were not kept: their job was put away.");
    scan(other.tag("pushrod@5IN"));
    assertThat(Photograph.listAll(other.job.state())).isEmpty();
    assertThat(Photograph.listAll(sample.job.state())).isEmpty();
  }

  @Test
  void aBearingsCardOffersItsJournalAndTheDroppedAreDroppedAgain() throws IOException {
    at(ScreenId.PHOTOGRAPHS);
    in(open -> open.shell.pictures().read(List.of(shop.resolve("nose.png"))));
    scan(sample.card("M2U"));
    assertThat(words()).contains("Main journal 2");
    press("Back");
    scan(sample.card("R3U"));
    assertThat(words()).containsIgnoringCase("rod journal");
    press("Back", "Later");
    assertThat(words()).contains("1 photograph not filed yet. Drop them again to go on.");
  }

  /** The journal has no tag and no card of its own: its bearing's place shows it. */
  @Test
  void aPlaceHasThePhotographsOfItsJournal() {
    Subject journal = new Subject.AFeature(Feature.ROD_JOURNAL, "B3");
    new Photographing(sample.job).add(Optional.of(journal), "", "one.png", "");
    Place shell = Place.find("rod-shell@R3L").orElseThrow();
    Place other = Place.find("rod-shell@R4L").orElseThrow();
    assertThat(PhotosOf.list(sample.job.state(), shell)).hasSize(1);
    assertThat(PhotosOf.list(sample.job.state(), other)).isEmpty();
  }
}
