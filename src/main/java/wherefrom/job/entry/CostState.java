package wherefrom.job.entry;

/** How far money has gone. The names stand in logbooks: they never change. */
public enum CostState {
  QUOTED("quoted"),
  COMMITTED("committed"),
  PAID("paid"),
  AVOIDED("saved by reuse");

  private final String words;

  CostState(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
