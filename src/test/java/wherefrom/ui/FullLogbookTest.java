package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.NoteAdded;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.app.Typable;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * Whoever writes: a disk that is full gives its sentence, and what was typed is asked for again.
 */
class FullLogbookTest {
  private static final String FULL = "The disk is full. Make room, then try again.";

  private final SampleJob sample = SampleJob.apart();

  private SampleWindow full() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    sample.logbook.fail(FULL);
    return window;
  }

  private void note(String words) {
    sample.job.record(new NoteAdded(sample.part("pushrod@3EX").item(), words));
  }

  private boolean isNoted(String words) {
    return sample.job.state().standing().stream()
        .anyMatch(logged -> logged.entry() instanceof NoteAdded note && note.text().equals(words));
  }

  private static void type(Screen screen, String words) {
    words.chars().forEach(each -> ((Typable) screen).type(Character.toString(each)));
  }

  @Test
  void wordsThatCouldNotBeKeptAreAskedForAgain() {
    Toolkit.on(
        () -> {
          SampleWindow window = full();
          ScreenContext context = window.shell.context();
          context.navigator().open(() -> new TextEntryScreen(context, "Note", "", this::note));
          type(context.navigator().current(), "a nick");
          window.layOut();
          window.press("Done");
          assertThat(window.words()).contains(FULL);
          sample.logbook.fail("");
          window.press("Done");
          assertThat(isNoted("a nick")).isTrue();
          return 0;
        });
  }

  /** The callback says what failed on its own: that it failed is seen all the same. */
  @Test
  void aFigureThatCouldNotBeKeptStandsOnThePadAgain() {
    Toolkit.on(
        () -> {
          SampleWindow window = full();
          ScreenContext context = window.shell.context();
          context
              .navigator()
              .open(
                  () ->
                      NumberEntryScreen.size(
                          context, "Size", "", 7, typed -> context.attempt(() -> note(typed))));
          Screen pad = context.navigator().current();
          type(pad, "0.0152");
          ((Typable) pad).enter();
          assertThat(window.shell.message()).isEqualTo(FULL);
          assertThat(context.navigator().current()).isSameAs(pad);
          sample.logbook.fail("");
          ((Typable) pad).enter();
          assertThat(isNoted("0.0152")).isTrue();
          assertThat(context.navigator().current()).isNotSameAs(pad);
          return 0;
        });
  }

  @Test
  void aChoiceThatCouldNotBeKeptIsAskedForAgain() {
    Toolkit.on(
        () -> {
          SampleWindow window = full();
          ScreenContext context = window.shell.context();
          List<Choice<String>> one = List.of(new Choice<>("rusted", "It is rusted", ""));
          context
              .navigator()
              .open(() -> new ChoiceScreen<>(context, "What is it?", one, this::note));
          window.layOut();
          window.press("It is rusted");
          assertThat(window.shell.message()).isEqualTo(FULL);
          sample.logbook.fail("");
          window.press("It is rusted");
          assertThat(isNoted("rusted")).isTrue();
          return 0;
        });
  }
}
