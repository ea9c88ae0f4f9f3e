package wherefrom.ui.sample;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.ports.Sounds;

/** A loudspeaker that remembers what it was to play. */
public final class Heard implements Sounds {
  private final List<Cue> cues = new ArrayList<>();
  private double volume = Double.NaN;

  @Override
  public void play(Cue cue) {
    cues.add(cue);
  }

  @Override
  public void setVolume(double loud) {
    volume = loud;
  }

  public double volume() {
    return volume;
  }

  /** What was played since this was asked before. */
  public List<Cue> take() {
    List<Cue> played = List.copyOf(cues);
    cues.clear();
    return played;
  }
}
