package wherefrom.ui.hands;

import javafx.scene.Node;
import wherefrom.parts.Place;

/** A finger on the glass: no scanner, no keyboard. */
final class Finger extends Hand {
  Finger(ShownWindow window) {
    super(window, "touch alone");
  }

  @Override
  protected void press(Node target) {
    tally.press();
    window.touch(target);
  }

  @Override
  void out(Place home) {
    press("It is out");
  }

  @Override
  void part(Place home) {
    press("Type code");
    type(window.typed(window.tag(home)));
    press("Done");
  }

  @Override
  void cure(Place home) {
    press("Scan the right part");
    type(window.typed(window.tag(home)));
    press("Done", "Yes");
  }

  @Override
  void place(Place place) {
    press("Type code");
    type(window.typed(window.card(place.spot().key())));
    press("Done");
  }

  private void type(String letters) {
    letters.codePoints().mapToObj(Character::toString).forEach(this::press);
  }

  @Override
  void write(String words) {
    type(words);
    press("Done");
  }

  @Override
  int most(int presses) {
    return presses;
  }

  /** The key, six figures, Done. */
  @Override
  int code() {
    return 8;
  }

  @Override
  void back() {
    press("Back");
  }
}
