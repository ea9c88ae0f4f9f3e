package wherefrom.job.entry;

/** A part's tag was lost or spoilt and gets a new issue; the older ones are retired. */
public record TagReissued(int item, int issue, String reason) implements JobEntry {
  @Override
  public boolean canBeTakenBack() {
    return false;
  }
}
