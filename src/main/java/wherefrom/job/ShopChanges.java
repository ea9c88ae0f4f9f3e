package wherefrom.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ShopWork;

/** The changes that work at the machine shop amounts to, from the entry on that it is back. */
public final class ShopChanges {
  private static final EntryTable<ShopChanges, List<Change>> BROUGHT =
      EntryRows.<ShopChanges, List<Change>>none()
          .on(ShopLineAdded.class, ShopChanges::added)
          .on(SentToShop.class, ShopChanges::sent)
          .on(ShopLineBack.class, ShopChanges::back)
          .on(BackFromShop.class, ShopChanges::back)
          .others(List.of());

  private record Line(int visit, int line) {}

  private final EngineJob job;
  private final Map<Line, ShopLineAdded> lines = new HashMap<>();
  private final Map<Integer, ShopWork> sent = new HashMap<>();

  /** Takes the entries of a job in their order. */
  public ShopChanges(EngineJob job) {
    this.job = job;
  }

  /** Takes over what another job of the same engine has, as it is now. */
  void takeOver(ShopChanges other) {
    lines.putAll(other.lines);
    sent.putAll(other.sent);
  }

  /** The changes that this entry brings; empty for most. */
  public List<Change> take(LoggedEntry logged) {
    return BROUGHT.of(this, logged.entry());
  }

  private List<Change> added(ShopLineAdded line) {
    lines.put(new Line(line.visit(), line.line()), line);
    return List.of();
  }

  private List<Change> sent(SentToShop parts) {
    parts.items().forEach(item -> sent.put(item, parts.work()));
    return List.of();
  }

  private List<Change> back(BackFromShop back) {
    return back.items().stream().flatMap(item -> back(item).stream()).distinct().toList();
  }

  /** What was measured on return counts before what was wanted. */
  private List<Change> back(ShopLineBack back) {
    ShopLineAdded line = lines.get(new Line(back.visit(), back.line()));
    if (line == null) {
      return List.of();
    }
    return line.work().changes(line.where(), back.size().or(line::target), job.layout());
  }

  private List<Change> back(int item) {
    ShopWork work = sent.getOrDefault(item, ShopWork.OTHER);
    return work.findWhere(job.getPart(item).part().home(), job.layout())
        .map(where -> work.changes(List.of(where), Optional.empty(), job.layout()))
        .orElse(List.of());
  }
}
