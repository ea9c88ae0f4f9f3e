package wherefrom.job.entry;

/** An earlier entry is taken back: the state is as if it had not been made. */
public record TakenBack(long sequence) implements JobEntry {
  @Override
  public boolean canBeTakenBack() {
    return false;
  }
}
