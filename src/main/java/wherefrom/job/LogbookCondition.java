package wherefrom.job;

/** How a logbook was found when it was opened. */
public sealed interface LogbookCondition {

  /** What to tell the person; empty when all is well. */
  String sentence();

  /** Whether entries can be added. */
  boolean writable();

  /** Every line agrees with its check sums. */
  record Sound() implements LogbookCondition {
    @Override
    public String sentence() {
      return "";
    }

    @Override
    public boolean writable() {
      return true;
    }
  }

  /** The last line was cut, as by a power failure: it is kept aside and work goes on. */
  record CutLine(String sentence) implements LogbookCondition {
    @Override
    public boolean writable() {
      return true;
    }
  }

  /** What is written can be lost, for the store is set so; work goes on all the same. */
  record Unkept(String sentence) implements LogbookCondition {
    @Override
    public boolean writable() {
      return true;
    }
  }

  /** Damage before the end, or another program holds the job: reading only. */
  record ReadOnly(String sentence) implements LogbookCondition {
    @Override
    public boolean writable() {
      return false;
    }
  }
}
