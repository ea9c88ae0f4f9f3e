package wherefrom.ui.settings;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.Settings;
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
                "A scanner that types like a keyboard needs nothing set as a rule. Where its digits"
                    + " come out wrong, press Teach the digits and scan the set-up card."),
            now,
            Panes.grow(last),
            Tiles.row(
                desk.scale(),
                touch.primary("Teach the digits", this::teach),
                touch.key("Type the prefix", this::prefix),
                touch.key("Forget all", () -> keep("", ""))));
  }

  private void teach() {
    desk.expectSetUpCard();
    last.setWords("Now scan the set-up card. It is printed under Print tags.");
  }

  private void prefix() {
    String before = desk.settings().scannerPrefix();
    desk.navigator()
        .open(
            () ->
                new TextEntryScreen(
                    desk,
                    "What the scanner sends before each code",
                    before,
                    words -> keep(words, desk.settings().scannerDigits())));
  }

  private void keep(String prefix, String digits) {
    desk.change(desk.settings().withScanner(prefix, digits));
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
    Settings settings = desk.settings();
    now.setWords(
        (settings.scannerPrefix().isEmpty()
                ? "No prefix is set."
                : "Prefix: " + settings.scannerPrefix() + ".")
            + (settings.scannerDigits().isEmpty()
                ? " The digits were not taught."
                : " The digits 0 to 9 arrive as " + settings.scannerDigits() + "."));
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
