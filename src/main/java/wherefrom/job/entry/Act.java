package wherefrom.job.entry;

import java.util.List;

/**
 * What was done in one act where it takes several entries to say it: written as one, so that a
 * power cut leaves all of it or nothing, and one UNDO takes it back.
 *
 * @param entries in order, at least two, none of them an act
 */
public record Act(List<JobEntry> entries) implements JobEntry {
  public Act {
    entries = List.copyOf(entries);
    if (entries.size() < 2 || entries.stream().anyMatch(Act.class::isInstance)) {
      throw new IllegalArgumentException("an act is made of two entries or more, none an act");
    }
  }

  /** These entries as one: a single one stands for itself. */
  public static JobEntry of(List<JobEntry> entries) {
    return entries.size() == 1 ? entries.get(0) : new Act(entries);
  }

  @Override
  public List<JobEntry> each() {
    return entries;
  }

  /** Where something in it can be taken back, the rest goes with it. */
  @Override
  public boolean canBeTakenBack() {
    return entries.stream().anyMatch(JobEntry::canBeTakenBack);
  }
}
