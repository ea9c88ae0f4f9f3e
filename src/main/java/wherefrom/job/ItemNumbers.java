package wherefrom.job;

import java.util.function.ToIntFunction;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.TagReissued;

/** The next numbers for items and for their tags, by every entry ever written. */
record ItemNumbers(OpenJob job) {
  /** The highest item number that an entry gives out. */
  private static final EntryTable<ItemNumbers, Integer> LAST_ITEM =
      EntryRows.<ItemNumbers, Integer>none()
          .on(PartReplaced.class, (job, replaced) -> replaced.newItem())
          .on(KindsTracked.class, (job, it) -> it.first() + it.items().size() - 1)
          .on(JobOpened.class, (job, opened) -> opened.numberedItems().size())
          .others(0);

  int nextItem() {
    int standing =
        job.state().parts().stream().mapToInt(part -> part.part().item()).max().orElse(0);
    return 1 + Math.max(standing, highest(entry -> LAST_ITEM.of(this, entry)));
  }

  int nextIssue(int item) {
    int tagged =
        highest(
            entry ->
                entry instanceof TagReissued reissued && reissued.item() == item
                    ? reissued.issue()
                    : 0);
    return 1 + Math.max(tagged, job.state().getPart(item).part().issue());
  }

  private int highest(ToIntFunction<JobEntry> number) {
    return job.history().stream().map(LoggedEntry::entry).mapToInt(number).max().orElse(0);
  }
}
