package wherefrom.ui.app;

import java.util.Optional;
import wherefrom.job.ports.Sounds;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.Ticker;

/** Sounds cues through the loudspeaker; a stop again every three seconds while it stands. */
public final class CueSounds implements VerdictSounds {
  private static final long AGAIN_MILLIS = 3000;

  private final Sounds speaker;
  private final Ticker ticker;
  private Optional<Ticker.Ticking> stop = Optional.empty();

  /**
   * Turns the loudspeaker fully up: whether there is sound at all is a setting of the window.
   *
   * @param speaker plays the tones
   * @param ticker lets the three seconds pass
   */
  public CueSounds(Sounds speaker, Ticker ticker) {
    this.speaker = speaker;
    this.ticker = ticker;
    speaker.setVolume(1);
  }

  @Override
  public void play(Cue cue) {
    hush();
    speaker.play(
        switch (cue) {
          case RIGHT -> Sounds.Cue.RIGHT;
          case STOP -> Sounds.Cue.STOP;
          case ASK -> Sounds.Cue.ASK;
        });
    if (cue == Cue.STOP) {
      stop = Optional.of(ticker.repeat(AGAIN_MILLIS, () -> speaker.play(Sounds.Cue.STOP)));
    }
  }

  @Override
  public void hush() {
    stop.ifPresent(Ticker.Ticking::end);
    stop = Optional.empty();
  }
}
