package wherefrom.ui.hands;

import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import wherefrom.parts.Place;
import wherefrom.ui.controls.TagKey;

/** A keyboard: Tab, arrows, Enter, Escape, figures and letters. */
final class Fingers extends Hand {
  /** Slow enough for a person, so that no key is taken for a scanner's. */
  private static final long PERSON_NANOS = 300_000_000L;

  /** Nobody presses before the screen is read. */
  private static final long READING_NANOS = 500_000_000L;

  private static final int MOST_STEPS = 120;

  Fingers(ShownWindow window) {
    super(window, "keyboard alone");
  }

  private void key(KeyCode code, String typed, boolean shift) {
    tally.press();
    window.act(() -> window.key(code, typed, shift, PERSON_NANOS));
  }

  private void enter() {
    key(KeyCode.ENTER, "\r", false);
  }

  @Override
  protected void press(Node target) {
    if (ringed().isEmpty()) {
      tab(false);
    }
    for (int step = 0; !ringed().equals(Optional.of(target)); step++) {
      if (step > MOST_STEPS) {
        throw new AssertionError("no key leads to " + window.look(() -> window.words(target)));
      }
      toward(target, step == 0);
    }
    window.act(() -> window.pass(READING_NANOS));
    enter();
  }

  private Optional<Node> ringed() {
    return window.look(window::ringed);
  }

  /** From the tag Tab leads to the keys; else an arrow where it comes nearer, else Tab. */
  private void toward(Node target, boolean first) {
    double before = far(target);
    Node from = ringed().orElse(target);
    if (first && from instanceof TagKey) {
      tab(false);
      return;
    }
    key(arrow(from, target), "", false);
    if (far(target) >= before) {
      tab(false);
    }
  }

  private void tab(boolean back) {
    key(KeyCode.TAB, "\t", back);
  }

  private double far(Node target) {
    return window.look(
        () ->
            window
                    .ringed()
                    .map(at -> middle(at).getCenterX() - middle(target).getCenterX())
                    .map(Math::abs)
                    .orElse(0.0)
                + window
                    .ringed()
                    .map(at -> middle(at).getCenterY() - middle(target).getCenterY())
                    .map(Math::abs)
                    .orElse(0.0));
  }

  private static Bounds middle(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }

  private KeyCode arrow(Node from, Node to) {
    return window.look(
        () -> {
          double right = middle(to).getCenterX() - middle(from).getCenterX();
          double down = middle(to).getCenterY() - middle(from).getCenterY();
          if (Math.abs(right) > Math.abs(down)) {
            return right > 0 ? KeyCode.RIGHT : KeyCode.LEFT;
          }
          return down > 0 ? KeyCode.DOWN : KeyCode.UP;
        });
  }

  @Override
  int first() {
    return 1;
  }

  /** Enter on the tag, where the ring stays from part to part. */
  @Override
  void out(Place home) {
    press("It is out");
  }

  @Override
  void part(Place home) {
    code(window.tag(home));
  }

  /** The stop shows the code: that its tag is in the hand is said, too. */
  @Override
  void cure(Place home) {
    part(home);
    press("Yes");
  }

  @Override
  void place(Place place) {
    code(window.card(place.spot().key()));
  }

  private void code(String digits) {
    for (char digit : window.typed(digits).toCharArray()) {
      key(KeyCode.getKeyCode(Character.toString(digit)), Character.toString(digit), false);
    }
    enter();
  }

  @Override
  void write(String words) {
    words
        .codePoints()
        .mapToObj(Character::toString)
        .forEach(letter -> key(KeyCode.UNDEFINED, letter, false));
    enter();
  }

  @Override
  int most(int presses) {
    return 3 * presses;
  }

  /** Six figures and Enter. */
  @Override
  int code() {
    return 7;
  }

  @Override
  void back() {
    key(KeyCode.ESCAPE, "", false);
  }
}
