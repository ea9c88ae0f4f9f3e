package wherefrom.ui.settings;

import java.util.function.Consumer;
import wherefrom.job.settings.Settings;
import wherefrom.parts.Action;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** Sets up a keyboard-type scanner and shows what it sends. */
public final class ScannerScreen extends Page implements Scannable {
  private final FitText now;
  private final FitText last;

  public ScannerScreen(ScreenContext context) {
    super(context, "Scanner", false);
    Touch touch = context.touch();
    now = touch.text("");
    last =
        touch.heading(touch.brief("Scan any tag to try the scanner.", "Scan any tag to try it."));
    lay(
        Panes.column(
            context.scale(),
            touch.text(
                touch.brief(
                    "Most scanners that type like a keyboard need nothing set. Are the digits"
                        + " wrong? Press Teach the digits, then scan the set-up card.",
                    "Digits wrong? Teach them.")),
            now,
            Panes.grow(last),
            touch.tag("Teach the digits", "", this::teach),
            KeyRow.of(
                context,
                new KeyRow.Act("Type the prefix", this::prefix),
                new KeyRow.Act("Type the suffix", this::suffix),
                new KeyRow.Act("Forget all", () -> keep(Settings.Scanner.PLAIN)))));
  }

  private void teach() {
    context.expectSetUpCard(true);
    last.setWords("Now scan the set-up card. It is printed under Print tags.");
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
    last.setWords("Read: " + scanned.text());
  }

  /** Large letters say nothing of what is not set: the keys below say that it can be. */
  @Override
  protected void refresh() {
    boolean told = !context.touch().isLarge() || !typing().equals(Settings.Scanner.PLAIN);
    now.setVisible(told);
    now.setManaged(told);
    now.setWords(
        set("prefix", typing().prefix())
            + " "
            + set("suffix", typing().suffix())
            + (typing().digits().isEmpty()
                ? " The digits were not taught."
                : " The digits 0 to 9 arrive as " + typing().digits() + "."));
  }

  private static String set(String name, String set) {
    return set.isEmpty() ? "No " + name + " is set." : "The " + name + " is “" + set + "”.";
  }
}
