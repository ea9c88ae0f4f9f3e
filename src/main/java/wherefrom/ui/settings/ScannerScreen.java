package wherefrom.ui.settings;

import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.settings.Settings;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Sets up a keyboard-type scanner and shows what it sends. */
public final class ScannerScreen implements Screen, Scannable {
  private final Desk desk;
  private final FitText now;
  private final FitText last;
  private final VBox view;

  public ScannerScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    now = touch.text("");
    last = touch.heading("Scan any tag to try the scanner.");
    view =
        Panes.column(
            desk.scale(),
            touch.text(
                touch.brief(
                    "Most scanners that type like a keyboard need nothing set. Are the digits"
                        + " wrong? Press Teach the digits, then scan the set-up card.",
                    "Digits wrong? Press Teach, then scan the set-up card.")),
            now,
            Panes.grow(last),
            Tiles.row(
                desk.scale(),
                touch.primary(touch.brief("Teach the digits", "Teach"), this::teach),
                touch.key(touch.brief("Type the prefix", "Prefix"), this::prefix),
                touch.key(touch.brief("Type the suffix", "Suffix"), this::suffix),
                touch.key(
                    touch.brief("Forget all", "Forget"), () -> keep(Settings.Scanner.PLAIN))));
  }

  private void teach() {
    desk.expectSetUpCard();
    last.setWords("Now scan the set-up card. It is printed under Print tags.");
  }

  private Settings.Scanner typing() {
    return desk.settings().scanner();
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
    desk.navigator().open(() -> new TextEntryScreen(desk, title, before, kept));
  }

  private void keep(Settings.Scanner typing) {
    desk.change(desk.settings().withScanner(typing));
    desk.scannerChanged();
    shown();
  }

  @Override
  public void scan(String text) {
    last.setWords("Read: " + text);
  }

  @Override
  public String title() {
    return "Scanner";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    now.setWords(
        set("prefix", typing().prefix())
            + " "
            + set("suffix", typing().suffix())
            + (typing().digits().isEmpty()
                ? " The digits were not taught."
                : " The digits 0 to 9 arrive as " + typing().digits() + "."));
  }

  private static String set(String name, String set) {
    return set.isEmpty() ? "No " + name + " is set." : "The " + name + " is " + set + " .";
  }

  @Override
  public void changed() {
    shown();
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
