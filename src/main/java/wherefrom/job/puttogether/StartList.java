package wherefrom.job.puttogether;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.inspection.Sources;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.StartTicked;

/** The list that is ticked before the first start, oil at each rocker a line of its own. */
public final class StartList {
  private static final String ROCKER = "rocker-";

  /**
   * A line of the list.
   *
   * @param key as the logbook names it
   * @param ticked whether somebody saw to it
   * @param words what was typed with the tick; may be empty
   */
  public record Line(String key, String title, String how, boolean ticked, String words) {
    /** Whether it is oil at one rocker. */
    public boolean isRocker() {
      return key.startsWith(ROCKER);
    }
  }

  private final OpenJob job;

  public StartList(OpenJob job) {
    this.job = job;
  }

  /** Every line; the rockers after what is driven until oil runs at them. */
  public List<Line> lines() {
    Map<String, StartTicked> ticks = ticks();
    List<Line> lines = new ArrayList<>();
    for (StartPoint point : StartPoint.values()) {
      lines.add(line(point.key(), point.title(), point.how(), ticks));
      if (point == StartPoint.PRIME) {
        rockers().forEach((key, words) -> lines.add(line(key, words, "Oil seen.", ticks)));
      }
    }
    return lines;
  }

  private Map<String, StartTicked> ticks() {
    Map<String, StartTicked> ticks = new LinkedHashMap<>();
    for (LoggedEntry logged : job.state().standing()) {
      if (logged.entry() instanceof StartTicked ticked) {
        ticks.put(ticked.point(), ticked);
      }
    }
    return ticks;
  }

  private static Line line(String key, String title, String how, Map<String, StartTicked> ticks) {
    Optional<StartTicked> tick = Optional.ofNullable(ticks.get(key)).filter(StartTicked::done);
    return new Line(key, title, how, tick.isPresent(), tick.map(StartTicked::words).orElse(""));
  }

  private Map<String, String> rockers() {
    Layout layout = job.state().layout();
    Map<String, String> rockers = new LinkedHashMap<>();
    for (Bank bank : layout.banks()) {
      layout
          .valvesInOrder(bank)
          .forEach(valve -> rockers.put(ROCKER + valve.key(), "Oil at rocker, " + valve.words()));
    }
    return rockers;
  }

  public Optional<Line> find(String key) {
    return lines().stream().filter(line -> line.key().equals(key)).findFirst();
  }

  /** How many lines nobody has ticked. */
  public int countOpen() {
    return (int) lines().stream().filter(line -> !line.ticked()).count();
  }

  /**
   * Keeps that a line was seen to, or is open again.
   *
   * @param words what was used or seen; may be empty
   * @throws IllegalArgumentException with a plain sentence when the list has no such line
   */
  public Line tick(String key, String words, boolean done) {
    return job.asOne(() -> tickOnce(key, words, done));
  }

  private Line tickOnce(String key, String words, boolean done) {
    if (find(key).isEmpty()) {
      throw new IllegalArgumentException("The list has no line \"" + key + "\".");
    }
    job.record(new StartTicked(key, words.strip(), done));
    return find(key).orElseThrow();
  }

  /** What is done by hand, ticked or not, as points of the first start. */
  List<FirstStart.Point> points() {
    return lines().stream()
        .filter(line -> !line.isRocker())
        .map(line -> new FirstStart.Point(line.title(), line.how(), Sources.PRACTICE, false))
        .toList();
  }
}
