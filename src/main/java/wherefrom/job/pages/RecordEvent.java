package wherefrom.job.pages;

import java.time.LocalDate;
import java.util.List;

/**
 * What happened on one day.
 *
 * @param told each thing in a few words, the most telling first
 */
public record RecordEvent(LocalDate day, List<String> told) {
  public RecordEvent {
    told = List.copyOf(told);
  }
}
