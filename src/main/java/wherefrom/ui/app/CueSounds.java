package wherefrom.ui.app;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.util.Duration;
import wherefrom.rules.Cue;

/** Sounds cues through the loudspeaker; a stop again every three seconds while it stands. */
public final class CueSounds implements Sounds {
  private static final Duration AGAIN = Duration.seconds(3);

  private final wherefrom.job.Sounds speaker;
  private final Timeline stop;

  /**
   * Turns the loudspeaker fully up: whether there is sound at all is a setting of the window.
   *
   * @param speaker plays the tones
   */
  public CueSounds(wherefrom.job.Sounds speaker) {
    this.speaker = speaker;
    speaker.setVolume(1);
    this.stop =
        new Timeline(new KeyFrame(AGAIN, event -> speaker.play(wherefrom.job.Sounds.Cue.STOP)));
    stop.setCycleCount(Animation.INDEFINITE);
  }

  @Override
  public void play(Cue cue) {
    hush();
    speaker.play(
        switch (cue) {
          case RIGHT -> wherefrom.job.Sounds.Cue.RIGHT;
          case STOP -> wherefrom.job.Sounds.Cue.STOP;
          case ASK -> wherefrom.job.Sounds.Cue.ASK;
        });
    if (cue == Cue.STOP) {
      stop.playFromStart();
    }
  }

  @Override
  public void hush() {
    stop.stop();
  }
}
