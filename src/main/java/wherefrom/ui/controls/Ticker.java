package wherefrom.ui.controls;

import java.util.function.Consumer;
import javafx.animation.Animation;
import javafx.animation.AnimationTimer;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.util.Duration;

/** Lets time pass on the window's thread; tests pass it on by hand. */
public interface Ticker {

  /** What ends something that goes on in time; ending it twice does no harm. */
  interface Ticking {
    void end();
  }

  /**
   * Tells how much time has passed since now, at every picture of the screen, until it is ended.
   *
   * @param passed is told milliseconds
   */
  Ticking follow(Consumer<Double> passed);

  /** Does something again and again, the first time after one interval. */
  Ticking repeat(long millis, Runnable act);

  /** The window's own time. */
  Ticker WINDOW =
      new Ticker() {
        @Override
        public Ticking follow(Consumer<Double> passed) {
          AnimationTimer timer =
              new AnimationTimer() {
                private long start = -1;

                @Override
                public void handle(long now) {
                  start = start < 0 ? now : start;
                  passed.accept((now - start) / 1e6);
                }
              };
          timer.start();
          return timer::stop;
        }

        @Override
        public Ticking repeat(long millis, Runnable act) {
          Timeline line =
              new Timeline(new KeyFrame(Duration.millis((double) millis), event -> act.run()));
          line.setCycleCount(Animation.INDEFINITE);
          line.playFromStart();
          return line::stop;
        }
      };
}
