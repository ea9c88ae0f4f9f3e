package wherefrom.job.settings;

/** The colors of the window. */
public enum Appearance {
  /** As the system is set. */
  SYSTEM,
  /** Dark letters on a light ground. */
  LIGHT,
  /** Light letters on a dark ground. */
  DARK
}
