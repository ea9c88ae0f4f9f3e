package wherefrom.ui.settings;

import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.settings.Settings;
import wherefrom.parts.Action;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** Sets up a keyboard-type scanner and shows what it sends. */
public final class ScannerScreen extends Page implements Scannable {
  /** What is to know, what is set now, what was read last. */
  private static final class Told {
    private final FitText now;
    private final FitText last;
    private final VBox view;

    Told(Touch touch, String known, String first) {
      now = touch.text("");
      last = touch.heading(first);
      view = Panes.column(touch.scale(), touch.text(known), now, Panes.grow(last));
    }

    void set(String words, boolean seen) {
      now.setWords(words);
      now.setVisible(seen);
      now.setManaged(seen);
    }
  }

  private final Told whole;
  private final Told brief;
  private final Either told;

  public ScannerScreen(ScreenContext context) {
    super(context, "Scanner", false);
    Touch touch = context.touch();
    whole =
        new Told(
            touch,
            "Most scanners that type like a keyboard need nothing set. Are the digits wrong? Press"
                + " Teach the digits, then scan the set-up card.",
            "Scan any tag to try the scanner.");
    brief = new Told(touch, "Digits wrong? Teach them.", "Scan any tag to try it.");
    told = new Either(room -> suiting(room.width(), room.height())).needing(brief.view);
    lay(
        Panes.column(
            context.scale(),
            told,
            touch.tag("Teach the digits", "", this::teach),
            KeyRow.of(
                context,
                new KeyRow.Act("Type the prefix", this::prefix),
                new KeyRow.Act("Type the suffix", this::suffix),
                new KeyRow.Act("Forget all", () -> keep(Settings.Scanner.PLAIN)))));
  }

  /** Few words where the glass has no room for all of them. */
  private Region suiting(double width, double height) {
    return whole.view.minHeight(width) <= height ? whole.view : brief.view;
  }

  private void last(String words) {
    whole.last.setWords(words);
    brief.last.setWords(words);
    told.again();
  }

  private void teach() {
    context.expectSetUpCard(true);
    last("Now scan the set-up card. It is printed under Print tags.");
  }

  /** Elsewhere a burst of ten different digits is a code, and no set-up card. */
  @Override
  public void hidden() {
    context.expectSetUpCard(false);
  }

  private Settings.Scanner typing() {
    return context.settings().scanner();
  }

  private void prefix() {
    type(
        "What the scanner sends before each code",
        typing().prefix(),
        words -> keep(new Settings.Scanner(words, typing().suffix(), typing().digits())));
  }

  private void suffix() {
    type(
        "What it sends after each code, before Enter or Tab",
        typing().suffix(),
        words -> keep(new Settings.Scanner(typing().prefix(), words, typing().digits())));
  }

  private void type(String title, String before, Consumer<String> kept) {
    context.navigator().open(() -> new TextEntryScreen(context, title, before, kept));
  }

  private void keep(Settings.Scanner typing) {
    context.change(context.settings().withScanner(typing));
    context.scannerChanged();
    refresh();
  }

  /** Any card tries the scanner; SKIP goes back. */
  @Override
  public boolean takes(Action card) {
    return card != Action.SKIP;
  }

  @Override
  public void scan(Scanned scanned) {
    last("Read: " + scanned.text());
  }

  /** Few words say nothing of what is not set: the keys below say that it can be. */
  @Override
  protected void refresh() {
    String now =
        set("prefix", typing().prefix())
            + " "
            + set("suffix", typing().suffix())
            + (typing().digits().isEmpty()
                ? " The digits were not taught."
                : " The digits 0 to 9 arrive as " + typing().digits() + ".");
    whole.set(now, true);
    brief.set(now, !typing().equals(Settings.Scanner.PLAIN));
    told.again();
  }

  private static String set(String name, String set) {
    return set.isEmpty() ? "No " + name + " is set." : "The " + name + " is “" + set + "”.";
  }
}
