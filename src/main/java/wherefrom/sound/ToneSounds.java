package wherefrom.sound;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import wherefrom.job.ports.Sounds;

/** Plays cues as tones, on a thread of its own; a cue that has to wait gives way to a newer one. */
public final class ToneSounds implements Sounds {
  private static final int WAITING = 1;
  private static final int IDLE_SECONDS = 10;

  private final Loudspeaker loudspeaker;
  private final ThreadPoolExecutor player =
      new ThreadPoolExecutor(
          1,
          1,
          IDLE_SECONDS,
          TimeUnit.SECONDS,
          new ArrayBlockingQueue<>(WAITING),
          ToneSounds::thread,
          new ThreadPoolExecutor.DiscardOldestPolicy());
  private volatile double volume;

  /**
   * @param volume 0 off to 1 full
   */
  public ToneSounds(double volume) {
    this(volume, new Loudspeaker());
  }

  ToneSounds(double volume, Loudspeaker loudspeaker) {
    this.volume = within(volume);
    this.loudspeaker = loudspeaker;
    player.allowCoreThreadTimeOut(true);
  }

  private static Thread thread(Runnable run) {
    Thread thread = new Thread(run, "sound");
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public void play(Cue cue) {
    double now = volume;
    if (now > 0) {
      player.execute(() -> loudspeaker.play(Samples.of(Tone.listOf(cue), now)));
    }
  }

  @Override
  public void setVolume(double newVolume) {
    volume = within(newVolume);
  }

  private static double within(double volume) {
    if (!(volume >= 0 && volume <= 1)) {
      throw new IllegalArgumentException("volume is not within 0 to 1: " + volume);
    }
    return volume;
  }
}
