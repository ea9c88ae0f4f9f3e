package wherefrom.ui.sample;

import java.util.List;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import wherefrom.job.PrintOrder;
import wherefrom.job.Shelf;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.ScreenId;

/** The window as a keyboard-type scanner works it, over a shelf of the test's own. */
public final class ScannedWindow {
  private static final long KEY_NANOS = 4_000_000L;

  private final SampleWindow window;

  public ScannedWindow(Shelf shelf) {
    window = new SampleWindow(96, 100, shelf);
  }

  public Desk desk() {
    return window.shell.desk();
  }

  public void show(ScreenId id) {
    desk().navigator().show(id);
    window.layOut();
  }

  /** Types a code as a scanner does, 4 ms a key, and ends it with Enter. */
  public void burst(String code) {
    code.codePoints().forEach(key -> key(Character.toString(key), KeyCode.UNDEFINED));
    key("\r", KeyCode.ENTER);
    window.nanos.addAndGet(400_000_000L);
    window.layOut();
  }

  private void key(String character, KeyCode code) {
    window.nanos.addAndGet(KEY_NANOS);
    fire(KeyEvent.KEY_PRESSED, KeyEvent.CHAR_UNDEFINED, code);
    fire(KeyEvent.KEY_TYPED, character, KeyCode.UNDEFINED);
    fire(KeyEvent.KEY_RELEASED, KeyEvent.CHAR_UNDEFINED, code);
  }

  private void fire(EventType<KeyEvent> type, String character, KeyCode code) {
    Event.fireEvent(
        window.scene, new KeyEvent(type, character, "", code, false, false, false, false));
  }

  public void press(String words) {
    window.press(words);
  }

  /** All words on the screen, wrapped lines joined. */
  public String words() {
    return window.words();
  }

  public List<PrintOrder> printed() {
    return window.equipment.printed;
  }
}
