package wherefrom.job;

/** A logbook that goes by another and closes it, for tests that change what it does. */
public class LogbookBeside extends BesideLogbook {
  private final Logbook shared;

  public LogbookBeside(Logbook shared) {
    super(shared);
    this.shared = shared;
  }

  @Override
  public void close() {
    shared.close();
  }
}
