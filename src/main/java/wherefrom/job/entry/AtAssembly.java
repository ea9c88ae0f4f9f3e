package wherefrom.job.entry;

/** What goes on threads and faces when fasteners are fitted, as it was found or is wanted. */
public enum AtAssembly {
  NOT_SAID("not said"),
  DRY("dry"),
  ENGINE_OIL("engine oil"),
  BOLT_LUBRICANT("bolt lubricant"),
  SEALER("thread sealer"),
  THREAD_LOCKER("thread locker");

  private final String words;

  AtAssembly(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
