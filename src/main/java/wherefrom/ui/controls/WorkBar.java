package wherefrom.ui.controls;

import java.util.Optional;
import javafx.scene.layout.Region;

/**
 * How far work is: as dark as far as it is. Where nobody can tell, a piece of it runs along, so
 * that one sees that it goes on. A bar of our own, because one bar of JavaFX's controls would have
 * their whole style sheet read before the window comes up.
 */
public final class WorkBar extends Region {
  private static final double PIECE = 0.2;
  private static final double ONCE_MS = 2000;

  private final Region done = new Region();
  private final Ticker ticker;
  private Optional<Ticker.Ticking> running = Optional.empty();
  private double from;
  private double part;

  public WorkBar(Ticker ticker) {
    this.ticker = ticker;
    getStyleClass().add("done-bar");
    done.getStyleClass().add("done-bar-done");
    done.setManaged(false);
    getChildren().add(done);
    setMouseTransparent(true);
  }

  /**
   * Shows how far it is.
   *
   * @param far 0 to 1; less than 0 where nobody can tell
   */
  public void show(double far) {
    if (far >= 0) {
      end();
      draw(0, Math.min(1, far));
    } else if (running.isEmpty()) {
      running = Optional.of(ticker.follow(this::run));
    }
  }

  private void end() {
    running.ifPresent(Ticker.Ticking::end);
    running = Optional.empty();
  }

  /** One that is no longer in a window stands still. */
  private void run(double passed) {
    if (passed > 0 && getScene() == null) {
      end();
    } else {
      draw((1 - PIECE) * (passed % ONCE_MS) / ONCE_MS, PIECE);
    }
  }

  private void draw(double start, double wide) {
    from = start;
    part = wide;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    Panes.place(done, from * getWidth(), 0, part * getWidth(), getHeight());
  }
}
