package wherefrom.ui.app;

import wherefrom.rules.Cue;

/** The sounds of verdicts; never the only sign of anything. */
public interface VerdictSounds {
  /** No sound at all. */
  VerdictSounds NONE =
      new VerdictSounds() {
        @Override
        public void play(Cue cue) {}

        @Override
        public void hush() {}
      };

  /** Sounds a cue; a stop goes on every three seconds until {@link #hush}. */
  void play(Cue cue);

  /** Ends what sounds. */
  void hush();
}
