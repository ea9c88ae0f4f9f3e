package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import org.junit.jupiter.api.Test;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** What large letters and small glass leave: the words that matter first, then the drawing. */
class RoomForWordsTest {
  private static final String AWAY =
      "No connection to the shared server bench-pc. Nothing is shown as done."
          + " What you did is sent again when it is back.";

  private static final String LONGER = AWAY + " " + AWAY;

  private static SampleWindow on(Glass glass, int percent) {
    return new SampleWindow(glass, percent, Appearance.LIGHT);
  }

  private static SampleWindow on(Glass glass, int percent, ScreenId screen, SampleJob sample) {
    SampleWindow window = on(glass, percent);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(screen);
    window.layOut();
    return window;
  }

  private static <N extends Node> List<N> all(Node node, Class<N> kind) {
    List<N> found = new ArrayList<>();
    if (kind.isInstance(node) && node.isVisible()) {
      found.add(kind.cast(node));
    }
    if (node instanceof Parent parent && node.isVisible()) {
      parent.getChildrenUnmodifiable().forEach(child -> found.addAll(all(child, kind)));
    }
    return found;
  }

  private static FitText words(SampleWindow window, String words) {
    return all(window.shell, FitText.class).stream()
        .filter(text -> text.words().equals(words))
        .findFirst()
        .orElseThrow(() -> new AssertionError(words + " is not among " + window.words()));
  }

  private static boolean isEngineDrawn(SampleWindow window) {
    return all(window.shell, EngineView.class).stream().anyMatch(EngineView::isDrawn);
  }

  @Test
  void aMessageStepsDownBeforeAWordOfItIsLeftOut() {
    Toolkit.on(
        () -> {
          SampleWindow window = on(Glass.SMALL, 200, ScreenId.TAKE_APART, SampleJob.whole());
          window.shell.context().say(AWAY);
          window.layOut();
          assertThat(words(window, AWAY).isCut()).isFalse();
          return window;
        });
  }

  /** What has no room says whole sentences, and where the others are. */
  @Test
  void aMessageIsNeverCutWithinASentence() {
    for (Glass glass : Glass.all()) {
      for (int percent : new int[] {100, 200}) {
        Toolkit.on(
            () -> {
              SampleWindow window = on(glass, percent, ScreenId.TAKE_APART, SampleJob.whole());
              window.shell.context().say(LONGER + " " + LONGER);
              window.layOut();
              FitText shown = message(window);
              assertThat(shown.isCut()).as(glass + "-" + percent).isFalse();
              assertThat(shown.words())
                  .as(glass + "-" + percent)
                  .startsWith("No connection to the shared server bench-pc. ")
                  .endsWith(". Help says more.");
              assertThat(window.shell.message()).isEqualTo(LONGER + " " + LONGER);
              return window;
            });
      }
    }
  }

  /** The title gives way to it where it must, and a third line comes where glass is narrow. */
  @Test
  void aMessageOfThreeSentencesIsSaidWhole() {
    for (Glass glass : Glass.all()) {
      Toolkit.on(
          () -> {
            SampleWindow window = on(glass, 100, ScreenId.TAKE_APART, SampleJob.whole());
            window.shell.context().say(AWAY);
            window.layOut();
            assertThat(words(window, AWAY).isCut()).as(glass.toString()).isFalse();
            return window;
          });
    }
  }

  private static FitText message(SampleWindow window) {
    return all(window.shell, FitText.class).stream()
        .filter(text -> text.getParent().getStyleClass().contains("message"))
        .findFirst()
        .orElseThrow();
  }

  /** The message would stand in the place of the title that says where one is. */
  @Test
  void helpHasTheMessageOnItsPageAndNotInItsTitle() {
    Toolkit.on(
        () -> {
          SampleWindow window = on(Glass.SMALL, 200, ScreenId.TAKE_APART, SampleJob.whole());
          window.shell.context().say(LONGER);
          window.layOut();
          window.press("Help");
          assertThat(window.shell.message()).isEmpty();
          assertThat(window.words()).contains("What now?", "Said last", "No connection");
          return window;
        });
  }

  @Test
  void whatIsAskedForIsReadBesideWhatIsTyped() {
    for (Glass glass : Glass.all()) {
      for (int percent : new int[] {100, 150, 200}) {
        Toolkit.on(
            () -> {
              SampleWindow window = on(glass, percent);
              ScreenContext context = window.shell.context();
              context
                  .navigator()
                  .open(() -> new TextEntryScreen(context, "What was put right?", "", text -> {}));
              window.layOut();
              assertThat(window.words()).as(glass + "-" + percent).contains("What was put right?");
              return window;
            });
      }
    }
  }

  @Test
  void theKeyThatTurnsTheEngineGivesWayToTheEngine() {
    Toolkit.on(
        () -> {
          SampleWindow window = on(Glass.UPRIGHT, 200, ScreenId.JOB_HOME, SampleJob.whole());
          assertThat(window.words()).contains("Print the tags first");
          assertThat(isEngineDrawn(window)).isTrue();
          return window;
        });
  }

  @Test
  void onLowGlassTheWaysGiveWayToTheEngine() {
    Toolkit.on(
        () -> {
          SampleWindow window = on(Glass.FINE, 150, ScreenId.PUT_TOGETHER, SampleJob.apart());
          assertThat(isEngineDrawn(window)).isTrue();
          window.press("More");
          assertThat(window.words()).contains("Follow list", "Scan both");
          return window;
        });
  }

  @Test
  void noMoreThanSixKeysStandBesideATag() {
    Shot damper = Gallery.shot("bags-damper");
    Toolkit.on(
        () -> {
          SampleWindow window = on(Glass.LAPTOP, 100);
          damper.arrange().accept(window);
          window.layOut();
          List<Node> keys =
              window.targets().stream().filter(key -> isWithin(key, KeyRow.class)).toList();
          assertThat(keys).hasSize(6);
          assertThat(window.words(keys.get(5))).isEqualTo("More");
          return window;
        });
  }

  private static boolean isWithin(Node node, Class<?> kind) {
    return node != null && (kind.isInstance(node) || isWithin(node.getParent(), kind));
  }

  /** As README shows it: how things are now and three ideas. */
  @Test
  void theWholePlanIsDrawnOnATablet() {
    Shot plan = Gallery.shot("numbers-plan");
    Toolkit.on(
        () -> {
          SampleWindow window = on(Glass.TABLET, 100);
          plan.arrange().accept(window);
          window.layOut();
          assertThat(window.words()).contains("Now", "8.79", "Idea 1", "9.50", "Idea 3", "9.03");
          return window;
        });
  }
}
