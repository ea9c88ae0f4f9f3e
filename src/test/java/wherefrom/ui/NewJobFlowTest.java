package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.settings.Appearance;
import wherefrom.parts.PartKind;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.engine.EngineScreen;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** Beginning a job by touch alone, with a layout of one's own. */
class NewJobFlowTest {
  private static void pressAll(SampleWindow window, String... words) {
    for (String each : words) {
      window.press(each);
    }
  }

  @Test
  void aJobIsBegunByTouchWithAChangedLayoutAndMoreKinds() {
    SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));
    Toolkit.on(
        () -> {
          pressAll(window, "New job", "Name", "M", "y", "Space", "8", "Done");
          pressAll(window, "Engine", "V8, odd and even");
          pressAll(window, "Edit engine", "Name in files");
          pressAll(window, "-", "b", "Done");
          window.pressOnSomePage("Main bearing that takes the thrust");
          pressAll(window, "3", "Done");
          pressAll(window, "Use it", "Tags for", "5 main caps no", "Back");
          pressAll(window, "Begin the job");
          return 0;
        });
    assertThat(window.shell.current()).isInstanceOf(JobHomeScreen.class);
    Layout layout = window.shell.context().state().layout();
    assertThat(window.shell.context().state().name()).isEqualTo("My 8");
    assertThat(layout.name()).isEqualTo("v8-odd-even-b");
    assertThat(layout.thrustMain()).isEqualTo(3);
    assertThat(window.shell.context().state().kinds())
        .contains(PartKind.MAIN_CAP)
        .containsAll(PartKind.alwaysOn())
        .hasSize(6);
  }

  @Test
  void aWrongLayoutIsNotUsedAndSaysWhy() {
    SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));
    Toolkit.on(
        () -> {
          pressAll(window, "New job", "Edit engine", "Name in files", "/", "Done");
          assertThat(window.words())
              .contains("Not yet: use small letters")
              .doesNotContain("Use it");
          pressAll(window, "Put right: Name in files");
          return 0;
        });
    assertThat(window.shell.current().title()).isEqualTo("Name in files");
  }

  /**
   * Rows of large letters have no room for the sentence: the board where it is put right says it.
   */
  @Test
  void inLargeLettersWhatIsWrongIsSaidWhereItIsPutRight() {
    SampleWindow window = Toolkit.on(() -> new SampleWindow(Glass.SMALL, 200, Appearance.LIGHT));
    Layout wrong = ReadyLayouts.find("inline-6").orElseThrow().copyAs("my six", "My six");
    Toolkit.on(
        () -> {
          ScreenContext context = window.shell.context();
          context.navigator().open(() -> new EngineScreen(context, wrong, used -> {}));
          window.layOut();
          window.press("Down");
          window.layOut();
          assertThat(window.words()).contains("Not right yet.").doesNotContain("small letters");
          pressAll(window, "Put right: Name in files");
          return 0;
        });
    assertThat(window.words()).contains("Not yet: use small letters, digits and hyphens");
  }

  @Test
  void aLayoutThatIsKeptIsReplacedOnlyWhereThePersonSaysSo() {
    SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));
    Layout first = ReadyLayouts.find("inline-6").orElseThrow();
    Layout changed = first.copyAs(first.name(), "Six of mine");
    window.services.shelf.keepLayout(first, false);
    Toolkit.on(
        () -> {
          ScreenContext context = window.shell.context();
          context.navigator().open(() -> new EngineScreen(context, changed, used -> {}));
          window.layOut();
          pressAll(window, "Keep on the shelf");
          return 0;
        });
    assertThat(window.words()).contains("The layout inline-6 is there", "Keep both", "Replace it");
    assertThat(window.services.shelf.listLayouts()).containsExactly(first);
    Toolkit.on(
        () -> {
          pressAll(window, "Keep both");
          return 0;
        });
    assertThat(window.shell.message())
        .isEqualTo("Six of mine is kept on the shelf for other jobs, as inline-6-2.");
    assertThat(window.services.shelf.listLayouts())
        .containsExactly(first, first.copyAs("inline-6-2", "Six of mine"));
    Toolkit.on(
        () -> {
          pressAll(window, "Keep on the shelf", "Replace it");
          return 0;
        });
    assertThat(window.services.shelf.listLayouts()).contains(changed).doesNotContain(first);
  }

  @Test
  void aNameIsNeverLostOnBack() {
    SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));
    Toolkit.on(
        () -> {
          pressAll(window, "New job", "Name", "M", "y");
          window.pressRail("Back");
          assertThat(window.words()).contains("My");
          window.pressRail("Back");
          pressAll(window, "New job");
          assertThat(window.words()).contains("My");
          pressAll(window, "Begin the job");
          return 0;
        });
    assertThat(window.shell.context().state().name()).isEqualTo("My");
  }

  @Test
  void theNextJobBeginsWithItsDayForAName() {
    SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));
    Toolkit.on(
        () -> {
          pressAll(window, "New job", "Name", "M", "Done", "Begin the job");
          window.pressRail("Jobs");
          pressAll(window, "New job");
          return 0;
        });
    assertThat(window.words()).contains("Engine, 4 May 2026");
  }
}
