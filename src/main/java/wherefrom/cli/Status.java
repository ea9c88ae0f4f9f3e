package wherefrom.cli;

/** How a call ends, for scripts. */
enum Status {
  /** Everything was right. */
  RIGHT(0),
  /** Something was stopped, and nothing is wrong with the call. */
  STOPPED(1),
  /** The call cannot be carried out. */
  BAD_INPUT(2);

  private final int exit;

  Status(int exit) {
    this.exit = exit;
  }

  int exit() {
    return exit;
  }

  /** The graver of the two. */
  Status and(Status other) {
    return compareTo(other) >= 0 ? this : other;
  }

  static Status stoppedIf(boolean stopped) {
    return stopped ? STOPPED : RIGHT;
  }
}
