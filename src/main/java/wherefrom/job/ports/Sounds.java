package wherefrom.job.ports;

/** Sounds that go with an answer; never the only sign of it. */
public interface Sounds {

  /** What a sound says. */
  enum Cue {
    /** Right place: one short high tone. */
    RIGHT,
    /** Stop: two low tones, to be asked for again every three seconds while the stop stands. */
    STOP,
    /** A question: one middle tone. */
    ASK
  }

  /** Plays a cue and returns at once; silent where the computer cannot play. */
  void play(Cue cue);

  /**
   * Sets how loud cues are from now on.
   *
   * @param volume 0 off to 1 full
   */
  void setVolume(double volume);
}
