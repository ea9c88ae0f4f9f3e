package wherefrom.job.pages;

/** The tables of the build record; their titles are for people and may change. */
public enum RecordTable {
  /** What is done and what is not, as counts. */
  IN_SHORT("In short"),
  /** What is open. */
  NOT_CHECKED("NOT CHECKED"),
  ON_PURPOSE("Fitted on purpose"),
  CHANGES("Changes and checks"),
  DEBRIS("Debris"),
  MACHINE_SHOP("Machine shop"),
  MONEY("Money"),
  BUYING("Buying"),
  /** What was seen, in the person's words. */
  SEEN("Seen"),
  PARTS("Parts"),
  MEASURED("Measured"),
  SIZES("Sizes"),
  BAGS("Bags and big parts"),
  RING_FILING("Ring filing"),
  WEIGHTS("Weights"),
  BEFORE_TEARDOWN("Before teardown"),
  CASTINGS("Castings"),
  FIRST_START("First start"),
  RUNNING("Run-in and service"),
  TOOLS("Tools"),
  TORQUE_CARDS("Torque cards"),
  TIMING("Timing"),
  PHOTOGRAPHS("Photographs"),
  /** What the plots say. */
  PLOTS("Plots"),
  /** On paper, a row for each table in which nothing was entered. */
  NOTHING_ENTERED("Nothing entered");

  private final String title;

  RecordTable(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }
}
