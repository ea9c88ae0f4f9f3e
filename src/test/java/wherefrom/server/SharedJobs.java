package wherefrom.server;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import wherefrom.job.LoggedEntry;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.NewEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.settings.ServerAddress;
import wherefrom.logbook.LogLines;
import wherefrom.parts.Place;
import wherefrom.referee.SharedReferee;

/** Jobs of one engine each on a server, and what is wrong with them after benches worked. */
record SharedJobs(ServerAddress address, List<String> names) {

  static SharedJobs begun(ServerAddress address, int count) {
    List<String> names = IntStream.rangeClosed(1, count).mapToObj(at -> "engine-" + at).toList();
    try (Database database = new Database(address, Map.of())) {
      for (int at = 0; at < count; at++) {
        new NewRows(database).add(names.get(at), 1_000 + at, opening(), Map.of());
      }
    }
    return new SharedJobs(address, names);
  }

  private static List<LogLines.Line> opening() {
    List<LogLines.Line> lines = new ArrayList<>();
    String tip = "";
    for (JobEntry entry : SharedReferee.opening()) {
      boolean first = lines.isEmpty();
      byte[] headers = first ? LogLines.header() : new byte[0];
      LoggedEntry logged = new LoggedEntry(lines.size() + 1L, Instant.EPOCH, entry);
      byte[] line = LogLines.line(logged, first ? LogLines.sum(headers) : tip);
      tip = LogLines.sum(line);
      lines.add(new LogLines.Line(headers, line));
    }
    return lines;
  }

  /** What is wrong, a sentence each; empty where all is as it should be. */
  List<String> faults(List<Worker.Shown> shown) {
    List<String> faults = new ArrayList<>();
    try (Database database = new Database(address, Map.of())) {
      for (String name : names) {
        LogLines.Read read = read(database, name);
        if (!read.trouble().isEmpty()) {
          faults.add(name + ": " + read.trouble());
        }
        missing(name, read.entries(), shown, faults);
        twice(name, read.entries(), faults);
        judged(name, read.entries()).ifPresent(faults::add);
      }
    }
    return faults;
  }

  /** Where benches have folded another state than the server's lines give up to there. */
  List<String> otherStates(List<Worker.Folded> folded) {
    List<String> faults = new ArrayList<>();
    try (Database database = new Database(address, Map.of())) {
      for (String name : names) {
        List<LoggedEntry> entries = read(database, name).entries();
        folded.stream()
            .filter(each -> each.job().equals(name))
            .filter(each -> !each.equals(folded(name, entries, each.sequence())))
            .forEach(each -> faults.add(each.line() + " is another state than the server's"));
      }
    }
    return faults;
  }

  private static Worker.Folded folded(String name, List<LoggedEntry> entries, long sequence) {
    MemoryLogbook logbook = new MemoryLogbook();
    entries.stream()
        .limit(sequence)
        .forEach(
            one ->
                logbook.append(
                    one.sequence() - 1,
                    new NewEntry(one.sequence(), one.time(), one.by(), one.entry())));
    return Worker.Folded.of(name, new OpenJob(logbook, Clock.systemUTC()));
  }

  private static LogLines.Read read(Database database, String name) {
    int id = database.ask(connection -> LineRows.findJob(connection, name)).orElseThrow();
    return LogLines.read(
        database.ask(connection -> LineRows.newer(connection, id, 0)).stream()
            .map(LineRows.Row::line)
            .toList());
  }

  private static void missing(
      String name, List<LoggedEntry> entries, List<Worker.Shown> shown, List<String> faults) {
    Set<Long> seen = new HashSet<>();
    for (Worker.Shown one : shown) {
      if (!one.job().equals(name)) {
        continue;
      }
      boolean there =
          one.sequence() <= entries.size()
              && entries.get((int) one.sequence() - 1).by().who().equals(one.who());
      if (!there || !seen.add(one.sequence())) {
        faults.add(one.line() + (there ? " was shown twice" : " was shown and is not there"));
      }
    }
  }

  private static void twice(String name, List<LoggedEntry> entries, List<String> faults) {
    Set<Integer> plans = new HashSet<>();
    for (LoggedEntry logged : entries) {
      if (logged.entry() instanceof ChangePlanned plan && !plans.add(plan.plan())) {
        faults.add(name + ": plan " + plan.plan() + " is there twice");
      }
    }
  }

  private static Optional<String> judged(String name, List<LoggedEntry> entries) {
    MemoryLogbook logbook = new MemoryLogbook();
    entries.forEach(logged -> logbook.append(logged.time(), logged.entry()));
    Map<Integer, Place> homes = new HashMap<>();
    new OpenJob(logbook, Clock.systemUTC())
        .state()
        .parts()
        .forEach(part -> homes.put(part.part().item(), part.part().home()));
    return SharedReferee.findDifference(entries, homes).map(found -> name + ": " + found);
  }
}
