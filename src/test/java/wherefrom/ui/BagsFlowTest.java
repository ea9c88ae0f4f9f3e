package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.Test;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.bags.BagAskScreen;
import wherefrom.ui.bags.BagScreen;
import wherefrom.ui.bags.BigPartScreen;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.takeapart.TakeApartScreen;

/**
 * Bags and big parts by their tags: out while the engine comes apart, in while it goes together.
 */
class BagsFlowTest {
  private static final int COVER = 8;

  private final SampleJob sample = SampleJob.whole();

  private SampleWindow window(ScreenId id) {
    return Toolkit.on(
        () -> {
          SampleWindow made = new SampleWindow(96, 100);
          made.shell.context().open(sample.job);
          made.shell.context().navigator().show(id);
          made.layOut();
          return made;
        });
  }

  private static void act(SampleWindow window, Consumer<SampleWindow> deed) {
    Toolkit.on(
        () -> {
          deed.accept(window);
          window.layOut();
          return 0;
        });
  }

  private static void scan(SampleWindow window, String digits) {
    act(
        window,
        it -> {
          it.scan(digits);
          it.shell.context().navigator().changed();
        });
  }

  private static String tag(TagType type, int number) {
    return new TagCode(type, SampleJob.ENGINE, number, 1).digits();
  }

  private static String words(SampleWindow window) {
    return Toolkit.on(() -> window.words());
  }

  private static Screen current(SampleWindow window) {
    return Toolkit.on(() -> window.shell.current());
  }

  private Whereabouts cover() {
    return BagBook.of(sample.job.state()).findBigPart(COVER).orElseThrow().where();
  }

  private Whereabouts bag() {
    return BagBook.of(sample.job.state()).findBag(1).orElseThrow().where();
  }

  @Test
  void aCoverIsTakenOffByItsScanPassedBySkipAndTakenBackByUndo() {
    new BigParts(sample.job).nameUsual();
    SampleWindow window = window(ScreenId.TAKE_APART);
    assertThat(words(window)).contains("Distributor");
    scan(window, sample.action(Action.SKIP));
    assertThat(words(window)).as("passed").contains("Carburetor");
    scan(window, tag(TagType.BIG_PART, COVER));
    assertThat(cover()).isEqualTo(Whereabouts.OUT);
    assertThat(current(window)).isInstanceOf(TakeApartScreen.class);
    scan(window, sample.action(Action.UNDO));
    assertThat(cover()).isEqualTo(Whereabouts.IN_ENGINE);
    act(window, it -> it.press("It is off"));
    assertThat(BagBook.of(sample.job.state()).findBigPart(2).orElseThrow().where())
        .isEqualTo(Whereabouts.OUT);
  }

  @Test
  void anEmptyBagThatIsScannedIsFilled() {
    new BigParts(sample.job).nameUsual();
    SampleWindow window = window(ScreenId.TAKE_APART);
    scan(window, tag(TagType.BAG, 1));
    act(window, it -> it.pressOnSomePage("cover bolts"));
    act(window, it -> it.pressOnSomePage("left valve cover"));
    act(window, it -> it.press("6"));
    act(window, it -> it.press("Done"));
    assertThat(current(window)).isInstanceOf(BagScreen.class);
    BagFilled filled = BagBook.of(sample.job.state()).findBag(1).orElseThrow().filled();
    assertThat(List.of(filled.what(), filled.bigPart(), filled.pieces()))
        .isEqualTo(List.of("cover bolts", COVER, 6));
  }

  /** The bag before its cover is asked about and left; the cover, then the bag, are in. */
  @Test
  void whileTogetherABagBeforeItsCoverIsAskedAboutAndTwiceIsSaid() {
    new BigParts(sample.job).nameUsual();
    new BigParts(sample.job).off(COVER, "");
    new Bags(sample.job)
        .fill(new BagFilled(1, "bolts", COVER, "", 6, List.of(), "", AtAssembly.NOT_SAID));
    SampleWindow window = window(ScreenId.PUT_TOGETHER);
    scan(window, tag(TagType.BAG, 1));
    assertThat(current(window)).isInstanceOf(BagAskScreen.class);
    assertThat(words(window)).contains("belongs to the left valve cover");
    act(window, it -> it.press("Leave it"));
    assertThat(bag()).isEqualTo(Whereabouts.OUT);
    scan(window, tag(TagType.BIG_PART, COVER));
    assertThat(cover()).isEqualTo(Whereabouts.FITTED);
    scan(window, tag(TagType.BAG, 1));
    assertThat(bag()).isEqualTo(Whereabouts.FITTED);
    scan(window, tag(TagType.BAG, 1));
    assertThat(words(window)).contains("Bag 1 is fitted already.");
    assertThat(current(window)).isInstanceOf(PutTogetherScreen.class);
  }

  @Test
  void elsewhereTheTagOpensThePage() {
    new BigParts(sample.job).nameUsual();
    for (ScreenId id : List.of(ScreenId.JOB_HOME, ScreenId.BENCH_MAP, ScreenId.MEASURE)) {
      SampleWindow window = window(id);
      scan(window, tag(TagType.BIG_PART, COVER));
      assertThat(current(window)).as(id.name()).isInstanceOf(BigPartScreen.class);
      scan(window, tag(TagType.BAG, 1));
      assertThat(current(window)).as(id.name()).isInstanceOf(BagScreen.class);
    }
    assertThat(cover()).isEqualTo(Whereabouts.IN_ENGINE);
  }

  /** A finger on the map, so many pixels from its corner. */
  private static void tap(SampleWindow window, double x, double y) {
    window.moment();
    Node map = window.targets().get(0);
    for (EventType<MouseEvent> type :
        List.of(MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED)) {
      MouseButton left = MouseButton.PRIMARY;
      Event.fireEvent(
          map,
          new MouseEvent(
              type, x, y, x, y, left, 1, false, false, false, false, true, false, false, true,
              false, true, null));
    }
  }

  @Test
  void aTapOnTheMapIsAHoleAndAnotherOnItChoosesIt() {
    new Bags(sample.job)
        .fill(new BagFilled(1, "bolts", 0, "", 6, List.of(), "", AtAssembly.NOT_SAID));
    SampleWindow window = window(ScreenId.TAKE_APART);
    act(window, it -> it.shell.context().navigator().show(ScreenId.BAG, 1));
    act(window, it -> it.pressBelow("Holes"));
    act(window, it -> tap(it, 200, 100));
    act(window, it -> tap(it, 600, 100));
    act(window, it -> tap(it, 203, 104));
    List<BoltHole> holes = BagBook.of(sample.job.state()).findBag(1).orElseThrow().filled().holes();
    assertThat(holes).as("the third tap is on the first hole").hasSize(2);
    assertThat(holes.get(0).across().orElseThrow()).isLessThan(holes.get(1).across().orElseThrow());
    assertThat(holes.get(0).down()).isEqualTo(holes.get(1).down());
    act(window, it -> it.press("Length of bolt 1"));
    act(window, it -> it.press("3"));
    act(window, it -> it.press("Done"));
    assertThat(
            BagBook.of(sample.job.state())
                .findBag(1)
                .orElseThrow()
                .filled()
                .holes()
                .get(0)
                .length())
        .isPresent();
  }
}
