package wherefrom.ui.running;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.job.running.ServiceBook;
import wherefrom.quantity.Dimension;

/** What an engine has run and what is due, in few words. */
public final class ServiceWords {
  private ServiceWords() {}

  /** {@code 35 mi and 2.5 h}, no figure parted from its unit; empty where nothing was noted. */
  public static String run(ServiceBook book) {
    return Stream.of(Dimension.DISTANCE, Dimension.RUNNING_TIME)
        .map(book::findRun)
        .flatMap(Optional::stream)
        .map(amount -> amount.text().replace(' ', '\u00a0'))
        .collect(Collectors.joining(" and "));
  }

  /** {@code 2 overdue, 1 due}. */
  public static String due(ServiceBook book) {
    int overdue = book.count(ServiceBook.State.OVERDUE);
    int due = book.count(ServiceBook.State.DUE);
    String later = due > 0 ? due + " due" : "";
    String first = overdue > 0 ? overdue + " overdue" : "";
    String both = first.isEmpty() || later.isEmpty() ? first + later : first + ", " + later;
    return both.isEmpty() ? "nothing due" : both;
  }
}
