package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.bags.BigParts;
import wherefrom.job.change.Planning;
import wherefrom.job.handling.Handling;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * Every kind of stop, and why a part is not cleared, in the window: which words stand, what its tag
 * is, that leaving what the tag opens leads back to the same stop, and what then solves it.
 */
class EveryStopLeadsOutTest {

  /**
   * One kind of stop.
   *
   * @param stop what stands on the screen
   * @param tag the words of the key that leads out
   * @param opens whether the tag opens another screen
   * @param arrange brings the stop about
   * @param cure what is pressed or typed then, each a code or a key
   * @param solved what stands on the screen after it
   */
  record Row(
      String stop,
      String tag,
      boolean opens,
      BiConsumer<SampleWindow, SampleJob> arrange,
      Function<SampleJob, List<String>> cure,
      String solved) {
    /** A window before this stop. */
    SampleWindow open(SampleJob sample) {
      SampleWindow window = new SampleWindow(96, 100);
      window.shell.context().open(sample.job);
      window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
      arrange.accept(window, sample);
      window.layOut();
      return window;
    }

    @Override
    public String toString() {
      return stop + ": " + tag;
    }
  }

  private static final int LEFT_HEAD = 10;
  private static final String[] HEAD_ON = {"It is on", "Back"};

  private static Row code(
      String stop, String tag, BiConsumer<SampleWindow, SampleJob> arrange, String place) {
    return new Row(stop, tag, true, arrange, job -> typed(job.tag(place)), "RIGHT PLACE");
  }

  /** The stop shows the code, so that typing it proves nothing: whose tag it is, is asked. */
  private static Row shown(
      String stop, String tag, BiConsumer<SampleWindow, SampleJob> arrange, String place) {
    return new Row(
        stop,
        tag,
        true,
        arrange,
        job -> Stream.concat(typed(job.tag(place)).stream(), Stream.of("Yes")).toList(),
        "RIGHT PLACE");
  }

  private static List<String> typed(String digits) {
    String six = TagCode.find(digits).orElseThrow().typed().replace(" ", "");
    return Stream.concat(six.codePoints().mapToObj(Character::toString), Stream.of("Done"))
        .toList();
  }

  private static Row pressed(
      String stop,
      String tag,
      boolean opens,
      BiConsumer<SampleWindow, SampleJob> arrange,
      String... keys) {
    return new Row(stop, tag, opens, arrange, job -> List.of(keys), "Now scan the place card");
  }

  static Stream<Row> scans() {
    return Stream.of(
        shown("From: 3 EX", "Scan the right part", pair("pushrod@3EX", "5EX"), "pushrod@5EX"),
        shown(
            "Here: rod 7, lower",
            "Scan the right part",
            pair("rod-shell@R7U", "R7L"),
            "rod-shell@R7L"),
        new Row(
            "Place taken: 3 EX",
            "Scan its own place",
            true,
            EveryStopLeadsOutTest::taken,
            job -> typed(job.card("5EX")),
            "RIGHT PLACE"),
        code(
            "Wrong end: 3 EX", "Turn it, scan again", EveryStopLeadsOutTest::turned, "pushrod@3EX"),
        shown(
            "You hold: a pushrod",
            "Scan the right part",
            EveryStopLeadsOutTest::otherKind,
            "main-shell@M1U"),
        code(
            "Tag of: Gray six",
            "Scan the right part",
            EveryStopLeadsOutTest::otherEngine,
            "pushrod@3EX"),
        shown("retired", "Scan the new part", EveryStopLeadsOutTest::retired, "rod-shell@R4L"),
        shown("Old tag: 3 EX", "Scan the newer tag", EveryStopLeadsOutTest::older, "pushrod@3EX"));
  }

  static Stream<Row> deeds() {
    return Stream.of(
        pressed("lost", "It is found", false, after((job, item) -> job.lost(item, ""))),
        pressed(
            "washing", "It is back", true, after((job, item) -> job.offForWashing(item, 2)), "Yes"),
        pressed("machine shop", "It is back", true, EveryStopLeadsOutTest::atTheShop, "Yes"),
        pressed(
            "not decided",
            "Decide",
            true,
            EveryStopLeadsOutTest::suspect,
            "Reuse",
            "measured good",
            "Reuse it all the same"),
        pressed(
            "pushrod: head is off",
            "Go to its head",
            true,
            EveryStopLeadsOutTest::headOff,
            HEAD_ON),
        pressed(
            "pushrod: head is away",
            "Go to its head",
            true,
            EveryStopLeadsOutTest::headWashing,
            "It is back",
            "Yes",
            "It is on",
            "Back"),
        pressed("check is open", "Do the check", true, EveryStopLeadsOutTest::gasket, "Pass"),
        new Row(
            "Fitted at: 5 EX",
            "Taken out there",
            false,
            EveryStopLeadsOutTest::elsewhere,
            job -> List.of(),
            "Recorded as taken out: 3 EX pushrod"),
        new Row(
            "In it: 3 EX pushrod",
            "That one is out",
            true,
            EveryStopLeadsOutTest::takenByAnother,
            job -> List.of("Yes"),
            "Recorded as taken out: 3 EX pushrod"),
        new Row(
            "Must be new: 3 EX",
            "Get a new part",
            false,
            EveryStopLeadsOutTest::bent,
            job -> List.of("must be new", "Print 1 sheet", "Back"),
            "Scan the new part"));
  }

  @ParameterizedTest
  @MethodSource({"scans", "deeds"})
  void itsFirstKeyLeadsOutAndComesBackToTheSameScan(Row row) {
    SampleJob sample = SampleJob.apart();
    Toolkit.on(
        () -> {
          SampleWindow window = row.open(sample);
          stands(window, row);
          if (row.opens()) {
            leaving(window, row, sample);
          }
          window.press(row.tag());
          row.cure().apply(sample).forEach(window::press);
          assertThat(window.words()).contains(row.solved());
          return window;
        });
  }

  private static void stands(SampleWindow window, Row row) {
    assertThat(window.shell.current()).isInstanceOf(PutTogetherScreen.class);
    assertThat(window.words().replace('\u00a0', ' ')).contains("STOP", row.stop(), row.tag());
  }

  /** Whoever looks and goes back without a deed stands before the same stop; nothing is logged. */
  private static void leaving(SampleWindow window, Row row, SampleJob sample) {
    int before = sample.job.history().size();
    window.press(row.tag());
    assertThat(window.shell.current()).isNotInstanceOf(PutTogetherScreen.class);
    window.shell.context().navigator().back();
    window.layOut();
    stands(window, row);
    assertThat(sample.job.history()).hasSize(before);
  }

  private static BiConsumer<SampleWindow, SampleJob> pair(String part, String spot) {
    return (window, sample) -> pair(window, sample, part, spot);
  }

  private static void pair(SampleWindow window, SampleJob sample, String part, String spot) {
    window.scan(sample.tag(part));
    window.scan(sample.card(spot));
  }

  private static void pushrod(SampleWindow window, SampleJob sample) {
    pair(window, sample, "pushrod@3EX", "3EX");
  }

  private static int item(SampleJob sample) {
    return sample.part("pushrod@3EX").item();
  }

  private static BiConsumer<SampleWindow, SampleJob> after(BiConsumer<Handling, Integer> handled) {
    return (window, sample) -> {
      handled.accept(new Handling(sample.job), item(sample));
      pushrod(window, sample);
    };
  }

  private static void headOff(SampleWindow window, SampleJob sample) {
    BigParts parts = new BigParts(sample.job);
    parts.nameUsual();
    parts.off(LEFT_HEAD, "for the test");
    pushrod(window, sample);
  }

  private static void headWashing(SampleWindow window, SampleJob sample) {
    BigParts parts = new BigParts(sample.job);
    parts.nameUsual();
    parts.off(LEFT_HEAD, "for the test");
    parts.move(LEFT_HEAD, Whereabouts.WASHING, "");
    pushrod(window, sample);
  }

  private static void taken(SampleWindow window, SampleJob sample) {
    new Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@3EX"), sample.spot("3EX"), "matched pair");
    pair(window, sample, "pushrod@5EX", "3EX");
  }

  /** The part in the hand is the right one: what is wrong is what sits there. */
  private static void takenByAnother(SampleWindow window, SampleJob sample) {
    new Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@3EX"), sample.spot("5EX"), "matched pair");
    pair(window, sample, "pushrod@5EX", "5EX");
  }

  private static void turned(SampleWindow window, SampleJob sample) {
    pushrod(window, sample);
    window.shell.context().navigator().changed();
    window.layOut();
    window.press("I held it");
  }

  private static void otherKind(SampleWindow window, SampleJob sample) {
    window.layOut();
    window.press("Follow list");
    window.scan(sample.tag("pushrod@3EX"));
  }

  private static void otherEngine(SampleWindow window, SampleJob sample) {
    window.scan(sample.card("3EX"));
    window.scan(new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits());
  }

  private static void retired(SampleWindow window, SampleJob sample) {
    String old = sample.tag("rod-shell@R4L");
    new Handling(sample.job).replace(sample.part("rod-shell@R4L").item(), "worn out");
    window.scan(old);
    window.scan(sample.card("R4L"));
  }

  private static void older(SampleWindow window, SampleJob sample) {
    String old = sample.tag("pushrod@3EX");
    new Handling(sample.job).reissue(item(sample), "soaked in oil");
    window.scan(old);
    window.scan(sample.card("3EX"));
  }

  private static void atTheShop(SampleWindow window, SampleJob sample) {
    new MachineShop(sample.job).send(1, List.of(item(sample)), "measure runout");
    pushrod(window, sample);
  }

  private static void suspect(SampleWindow window, SampleJob sample) {
    new Inspecting(sample.job)
        .answer(Subject.ofPart(item(sample)), "pushrod-roll", Look.SUSPECT, "");
    pushrod(window, sample);
  }

  private static void gasket(SampleWindow window, SampleJob sample) {
    new Planning(sample.job).make(Change.at(ChangeKind.GASKET_THICKNESS, ""));
    pushrod(window, sample);
  }

  private static void elsewhere(SampleWindow window, SampleJob sample) {
    new Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@3EX"), sample.spot("5EX"), "matched pair");
    pushrod(window, sample);
  }

  private static void bent(SampleWindow window, SampleJob sample) {
    new Planning(sample.job).make(Change.at(ChangeKind.PUSHROD_BENT, "3EX"));
    pushrod(window, sample);
  }
}
