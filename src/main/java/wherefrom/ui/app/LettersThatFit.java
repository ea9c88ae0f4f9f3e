package wherefrom.ui.app;

import java.util.Optional;

/**
 * A screen that has no room for letters of the size that is set gets the next smaller ones, so that
 * nothing of it is cut: made anew where nothing was done on it yet, else where it stands.
 */
final class LettersThatFit {
  private final WindowDress dress;
  private final ScreenPath path;
  private final Runnable arrange;
  private final Runnable remake;
  private Optional<Object> stoodFor = Optional.empty();

  /**
   * @param arrange lays the screen that is up into the frame
   * @param remake makes the screen that is up anew with the next smaller letters
   */
  LettersThatFit(WindowDress dress, ScreenPath path, Runnable arrange, Runnable remake) {
    this.dress = dress;
    this.path = path;
    this.arrange = arrange;
    this.remake = remake;
  }

  /** What the whole glass stood for with smaller letters is over: the next may have room. */
  void renew() {
    boolean over = stoodFor.isPresent() && !stoodFor.equals(WholeGlass.standing(path.current()));
    if (!over || path.letters() == path.set()) {
      return;
    }
    path.grow();
    if (dress.letters() != path.set()) {
      dress.reframe(path.set());
      arrange.run();
    }
  }

  void fit() {
    stoodFor = WholeGlass.standing(path.current());
    if (stoodFor.isPresent()) {
      dress.frame().settle();
    }
    if (dress.frame().fits()) {
      return;
    }
    if (path.letters() > 1) {
      smaller();
    } else if (dress.letters() > 1) {
      dress.reframe(1);
      arrange.run();
      fit();
    } else if (path.isShrunk()) {
      remake.run();
    }
  }

  private void smaller() {
    if (path.isFresh()) {
      remake.run();
    } else {
      path.shrink();
      path.current().shrunk();
      dress.frame().layAllOut();
      fit();
    }
  }
}
