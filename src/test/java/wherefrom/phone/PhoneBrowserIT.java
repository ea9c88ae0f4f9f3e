package wherefrom.phone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.photos.Photograph;
import wherefrom.job.print.Face;
import wherefrom.job.print.TagFaces;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/**
 * A real browser as the phone, with glass of a phone's size and touch: it joins by the code that is
 * read on a picture of the window, and works with photographs of printed tags.
 */
class PhoneBrowserIT {
  private static final int PUSHROD_3EX = 0;
  private static final int PUSHROD_5EX = 1;
  private static final int CARD_3EX = 2;
  private static final int CARD_7EX = 3;
  private static final int NEVER_ISSUED = 4;
  private static final int OTHER_ENGINE = 5;

  private static final Path PICTURES =
      Path.of(System.getProperty("wherefrom.target", "target"), "phone");

  @TempDir Path folder;

  private final TimedReader reader = new TimedReader();
  private PhoneWindow window;
  private PhotographedTags tags;
  private final List<Browser> phones = new ArrayList<>();

  @BeforeAll
  static void theBrowserIsThere() throws IOException {
    assumeTrue(Browser.isThere(), "The packages chromium and chromium-driver are not installed.");
    Files.createDirectories(PICTURES);
    System.setProperty("testfx.robot", "glass");
    System.setProperty("testfx.headless", "true");
    System.setProperty("prism.order", "sw");
  }

  @BeforeEach
  void openTheWindow() throws IOException {
    window = PhoneWindow.open(folder.resolve("shop"), reader);
    window.letIn();
  }

  private void printTags() throws IOException {
    List<Face> faces =
        window.ask(
            job ->
                List.of(
                    tag(job.state(), "pushrod@3EX"),
                    tag(job.state(), "pushrod@5EX"),
                    card(job.state(), "3EX"),
                    card(job.state(), "7EX"),
                    strange(job.state(), job.state().engine(), 900),
                    strange(job.state(), job.state().engine() + 1, 12)));
    tags = window.ask(job -> printed(job, faces));
  }

  private PhotographedTags printed(OpenJob job, List<Face> faces) {
    try {
      return PhotographedTags.print(job, faces, folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Part part(EngineJob job, String place) {
    return job.findOwner(Place.find(place).orElseThrow()).orElseThrow();
  }

  private static Face tag(EngineJob job, String place) {
    return TagFaces.part(part(job, place), job.engine(), job.layout(), job.name());
  }

  private static Face card(EngineJob job, String spot) {
    Spot at = Spots.find(spot).orElseThrow();
    return TagFaces.placeCard(new TagBook(job, engine -> Optional.empty()).of(at), at, job.name());
  }

  private static Face strange(EngineJob job, int engine, int item) {
    Part like = part(job, "pushrod@3EX");
    return TagFaces.part(
        new TagCode(TagType.PART, engine, item, 1),
        like.home(),
        Orientation.TOP_END,
        job.name(),
        1,
        false);
  }

  private Browser phone(int width, int height, boolean dark) throws IOException {
    Path profile = Files.createTempDirectory(folder, "profile");
    Browser phone = Browser.open(width, height, dark, profile);
    phones.add(phone);
    return phone;
  }

  private Browser joined(int width, int height, boolean dark, String name) throws IOException {
    Browser phone = phone(width, height, dark);
    phone.go(PhoneWindow.readCode(window.picture()));
    phone.waitForWords("Same number on the big screen?");
    phone.type("#join-name", name);
    phone.touch("#join-go");
    phone.waitForWords("Photograph a tag");
    return phone;
  }

  @AfterEach
  void close() throws IOException {
    for (Browser phone : phones) {
      phone.close();
    }
    window.closeJob();
  }

  private void look(Browser phone, String name) throws IOException {
    phone.picture(PICTURES.resolve(name + ".png"));
    List<String> faults = PageAudit.faults(phone);
    assertThat(faults).as(name).isEmpty();
  }

  @Test
  void aPhoneJoinsByTheCodeInTheWindowAndFitsPartsByPhotographs() throws IOException {
    printTags();
    Browser phone = phone(360, 740, false);
    String link = PhoneWindow.readCode(window.picture());
    assertThat(link).matches("http://127\\.0\\.0\\.1:[0-9]+/#[A-Za-z0-9_-]{22}");
    phone.go(link);
    phone.waitForWords("Same number on the big screen?");
    phone.waitForWords("Launch V8");
    String number = phone.run("return document.getElementById('join-number').innerText").asText();
    assertThat(window.words()).contains(number);
    assertThat(phone.run("return location.href").asText()).doesNotContain("#");
    look(phone, "join");
    phone.type("#join-name", "Anna");
    phone.touch("#join-go");
    phone.waitForWords("Scan a part or its place card.");
    look(phone, "start");
    assertThat(window.words()).contains("Phone 1, Anna");

    photograph(phone, "part", true, PUSHROD_3EX);
    phone.waitForWords("Part in hand");
    look(phone, "hand");
    photograph(phone, "card", true, CARD_3EX);
    phone.waitForWords("RIGHT PLACE");
    assertThat(phone.seen()).contains("3 EX pushrod");
    look(phone, "right");
    assertThat(isFitted("pushrod@3EX")).isTrue();

    photograph(phone, "other-part", true, PUSHROD_5EX);
    phone.waitForWords("Part in hand");
    photograph(phone, "other-card", false, CARD_7EX);
    phone.waitForWords("STOP");
    assertThat(phone.seen()).contains("From:", "5 EX", "Here:", "7 EX", "Scan the right part");
    look(phone, "stop");
    assertThat(isFitted("pushrod@7EX")).isFalse();
    phone.press("UNDO");
    phone.waitForWords("Taken back:");
    assertThat(phone.seen()).doesNotContain("STOP");

    photograph(phone, "strange", false, NEVER_ISSUED);
    phone.waitForWords("no such tag was issued");
    look(phone, "strange");
    photograph(phone, "engine", false, OTHER_ENGINE);
    phone.waitForWords("Keep them apart");
    phone.press("UNDO");
    phone.waitForWords("Taken back:");
    photograph(phone, "nothing", false);
    phone.waitForWords("NO TAG WAS READ");
    look(phone, "nothing");
    System.out.printf(
        Locale.ROOT, "longest reading of 12 megapixels: %.2f s%n", reader.longest() / 1e9);
  }

  private boolean isFitted(String place) {
    return window.ask(job -> job.state().findFitted(Place.find(place).orElseThrow()).isPresent());
  }

  private void photograph(Browser phone, String name, boolean damaged, int... which)
      throws IOException {
    phone.photograph("#scan", tags.photograph(name, damaged, which));
  }

  /** What was pressed while the connection was away is not shown as done, and is done once. */
  @Test
  void aPhoneLosesItsConnectionAndFindsIt() throws IOException {
    printTags();
    Browser phone = joined(412, 915, true, "");
    photograph(phone, "part", false, PUSHROD_3EX);
    phone.waitForWords("Part in hand");
    long before = window.entries();

    phone.connect(false);
    photograph(phone, "card", false, CARD_3EX);
    phone.waitForWords("Not done yet");
    phone.waitForWords("No connection.");
    look(phone, "lost");
    assertThat(phone.seen()).doesNotContain("RIGHT PLACE");
    assertThat(window.entries()).isEqualTo(before);
    phone.connect(true);
    phone.waitForWords("RIGHT PLACE");
    assertThat(window.entries()).isEqualTo(before + 1);

    // It arrives, and the answer is lost: sent again, it is not done twice.
    phone.run(
        "const real = window.fetch;"
            + "window.fetch = (...words) => real(...words).then(() => {"
            + " window.fetch = real; throw new TypeError('the answer is lost'); });");
    photograph(phone, "again", false, CARD_7EX);
    phone.waitForWords("Place");
    photograph(phone, "next", false, PUSHROD_5EX);
    phone.waitForWords("STOP");
    assertThat(window.entries()).isEqualTo(before + 2);

    phone.connect(false);
    phone.waitForWords("No connection");
    phone.connect(true);
    phone.waitForWords("STOP");
    phone.reload();
    phone.waitForWords("STOP");
  }

  @Test
  void aPhoneTypesChoosesAndFilesAPhotograph() throws IOException {
    printTags();
    Browser phone = joined(360, 740, true, "Bo");
    type(phone, window.ask(job -> typed(job.state(), "pushrod@3EX")));
    phone.waitForWords("Part in hand");
    phone.press("More");
    phone.waitForWords("Photograph this");
    look(phone, "more");
    phone.photograph("#keep", tags.photograph("seen", false, PUSHROD_3EX));
    phone.waitForWords("Kept with the");
    int item = window.ask(job -> part(job.state(), "pushrod@3EX").item());
    List<Photograph> kept = window.ask(job -> Photograph.listOf(job.state(), Subject.ofPart(item)));
    assertThat(kept).hasSize(1);

    photograph(phone, "two", false, PUSHROD_3EX, CARD_3EX);
    phone.waitForWords("2 tags: which one?");
    look(phone, "two");
    phone.press("Place card: cylinder 3, exhaust");
    phone.waitForWords("RIGHT PLACE");

    phone.press("More");
    phone.press("Follow the list");
    phone.waitForWords("Next place");
    look(phone, "list");
    phone.press("More");
    phone.press("Where does this go?");
    type(phone, window.ask(job -> typed(job.state(), "pushrod@5EX")));
    phone.waitForWords("It goes here");
    look(phone, "where");
  }

  private static String typed(EngineJob job, String place) {
    return part(job, place).code(job.engine()).typed().replace(" ", "");
  }

  private void type(Browser phone, String digits) throws IOException {
    phone.press("Type code");
    for (char digit : digits.toCharArray()) {
      phone.press(String.valueOf(digit));
    }
    look(phone, "pad");
    phone.touch("#pad-go");
  }

  @Test
  void aStopIsOverruledByAReasonAndAHeldKey() throws IOException {
    printTags();
    Browser phone = joined(412, 915, false, "");
    photograph(phone, "part", false, PUSHROD_5EX);
    phone.waitForWords("Part in hand");
    photograph(phone, "card", false, CARD_7EX);
    phone.waitForWords("STOP");
    look(phone, "stop-large");
    phone.press("More");
    phone.press("On purpose");
    phone.waitForWords("Why does it go here?");
    look(phone, "why");
    phone.press("Matched pair");
    phone.waitForWords("Hold: matched pair");
    look(phone, "hold");
    long before = window.entries();
    phone.touch("#choices .held", 300);
    assertThat(window.entries()).isEqualTo(before);
    phone.hold("Hold: matched pair");
    phone.waitForWords("Fitted on purpose");
    assertThat(isFitted("pushrod@7EX")).isTrue();
  }

  /** A request that fails, one that is on its way and a lost connection leave it to be seen. */
  @Test
  void aStopStaysOnTheGlassUntilItIsDealtWith() throws IOException {
    printTags();
    Browser phone = joined(360, 740, false, "");
    photograph(phone, "part", false, PUSHROD_5EX);
    phone.waitForWords("Part in hand");
    photograph(phone, "card", false, CARD_7EX);
    phone.waitForWords("STOP");
    Path broken = Files.write(folder.resolve("broken.jpg"), new byte[] {1, 2, 3});
    phone.photograph("#scan", broken);
    phone.waitForWords("Nothing was done.");
    assertThat(phone.seen()).contains("STOP", "From:", "5 EX", "Here:", "7 EX");
    look(phone, "stop-failed");

    phone.connect(false);
    phone.waitForWords("No connection");
    assertThat(phone.seen()).contains("STOP still stands.");
    look(phone, "stop-lost");
    photograph(phone, "more", false, PUSHROD_3EX);
    phone.waitForWords("Not done yet");
    assertThat(phone.seen()).contains("STOP still stands.");
    phone.press("Drop it");
    phone.connect(true);
    phone.waitForWords("From:");

    phone.press("UNDO");
    phone.waitForWords("Taken back:");
    assertThat(phone.seen()).doesNotContain("STOP");
    phone.connect(false);
    phone.waitForWords("No connection");
    assertThat(phone.seen()).doesNotContain("STOP");
  }

  /** The computer is reached and cannot write, as where the shared server is away. */
  @Test
  void whatCannotBeWrittenYetIsSaidAndCanBeDropped() throws IOException {
    printTags();
    Browser phone = joined(360, 740, false, "");
    phone.run(
        "window.real = window.fetch;"
            + "window.fetch = () => Promise.resolve("
            + " new Response('{\"said\":\"No connection to the shared server.\"}', {status: 503}));");
    photograph(phone, "part", false, PUSHROD_3EX);
    phone.waitForWords("No connection to the shared server. It is sent again by itself.");
    look(phone, "held");
    phone.press("Drop it");
    phone.run("window.fetch = window.real;");
    phone.waitForWords("Photograph a tag");
    photograph(phone, "other", false, PUSHROD_5EX);
    phone.waitForWords("Part in hand");
    assertThat(phone.seen()).contains("5 EX").doesNotContain("3 EX");
  }

  @Test
  void stopInTheWindowEndsIt() throws IOException {
    Browser phone = joined(360, 740, false, "");
    window.press("Stop");
    phone.waitForWords("No connection");
    window.press("Let phones in");
    phone.waitForWords("Not joined.");
    look(phone, "out");
  }
}
