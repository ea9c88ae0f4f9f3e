package wherefrom.job;

import java.util.List;

/** The entries that stand at one time, oldest first. */
record StandingList(List<LoggedEntry> entries) {
  StandingList {
    entries = List.copyOf(entries);
  }
}
