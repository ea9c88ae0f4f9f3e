package wherefrom.ui.hands;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import wherefrom.parts.Action;
import wherefrom.parts.Place;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.TagPlate;

/** A scanner, the tags, the place cards and the six action cards; no mouse, no other key. */
final class Scanner extends Hand {
  private static final long KEY_NANOS = 4_000_000L;
  private static final long BETWEEN_NANOS = 900_000_000L;
  private static final int MOST_STEPS = 80;

  Scanner(ShownWindow window) {
    super(window, "scanner and cards alone");
  }

  private void scan(String digits) {
    tally.scan();
    window.act(
        () -> {
          window.pass(BETWEEN_NANOS);
          digits
              .codePoints()
              .mapToObj(Character::toString)
              .forEach(digit -> window.key(KeyCode.getKeyCode(digit), digit, false, KEY_NANOS));
          window.key(KeyCode.ENTER, "\r", false, KEY_NANOS);
        });
  }

  private void scan(Action card) {
    scan(card.code().digits());
  }

  /** YES presses the tag at once; to any other key NEXT leads first. */
  @Override
  protected void press(Node target) {
    boolean tag = target instanceof TagKey || target instanceof TagPlate;
    if (!tag || ringed().isPresent()) {
      for (int step = 0; !ringed().equals(Optional.of(target)); step++) {
        if (step > MOST_STEPS) {
          throw new AssertionError("no card leads to " + window.look(() -> window.words(target)));
        }
        scan(Action.NEXT);
      }
    }
    scan(Action.YES);
  }

  private Optional<Node> ringed() {
    return window.look(window::ringed);
  }

  @Override
  void out(Place home) {
    part(home);
  }

  @Override
  void part(Place home) {
    scan(window.tag(home));
  }

  @Override
  void place(Place place) {
    scan(window.card(place.spot().key()));
  }

  @Override
  void write(String words) {
    words.codePoints().mapToObj(Character::toString).forEach(this::press);
    press("Done");
  }

  @Override
  int most(int presses) {
    return 4 * presses;
  }

  /** One scan. */
  @Override
  int code() {
    return 1;
  }

  @Override
  void back() {
    scan(Action.SKIP);
  }
}
