package wherefrom.job.shop;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.parts.Part;

/**
 * One visit to the machine shop, as its slip says.
 *
 * @param sent when the first thing of it was written down
 * @param parts tagged parts that went, with what is wanted of each
 * @param lines what carries no tag, and work with figures
 */
public record ShopVisit(int number, Instant sent, List<Sent> parts, List<Line> lines) {

  /** A tagged part on a visit. */
  public record Sent(Part part, String wanted, boolean back) {}

  /**
   * A line of the slip.
   *
   * @param back how many pieces came back
   * @param returned the sizes measured on return, with what was found
   * @param beside the bag or the big part that it is of, which goes once for all its work
   */
  public record Line(
      ShopLineAdded line, int back, List<String> returned, Optional<Subject.Beside> beside) {
    public Line {
      returned = List.copyOf(returned);
    }

    boolean isOf(Subject.Beside what) {
      return beside.equals(Optional.of(what));
    }

    public int missing() {
      return Math.max(0, line.count() - back);
    }

    /** {@code 3.9100 in, within 0.0005 in}; empty where no size was asked for. */
    public Optional<String> target() {
      String within = line.tolerance().map(good -> ", within " + good.text()).orElse("");
      return line.target().map(size -> size.text() + within);
    }
  }

  public ShopVisit {
    parts = List.copyOf(parts);
    lines = List.copyOf(lines);
  }

  /** How many pieces went, tagged and untagged. */
  public int pieces() {
    return parts.stream().mapToInt(sent -> sent.part().pieces()).sum()
        + count(line -> line.line().count());
  }

  /** How many pieces are not back. */
  public int missing() {
    return parts.stream().filter(sent -> !sent.back()).mapToInt(s -> s.part().pieces()).sum()
        + count(Line::missing);
  }

  /** Of a bag or a big part, the most that one of its lines says. */
  private int count(ToIntFunction<Line> pieces) {
    int plain = lines.stream().filter(line -> line.beside().isEmpty()).mapToInt(pieces).sum();
    Map<Subject.Beside, Integer> beside = new HashMap<>();
    for (Line line : lines) {
      line.beside().ifPresent(what -> beside.merge(what, pieces.applyAsInt(line), Math::max));
    }
    return plain + beside.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** What must not get lost: every tagged part, and the lines marked so. */
  public List<String> doNotLose() {
    List<String> keep = new ArrayList<>();
    for (Sent sent : parts) {
      keep.add(sent.part().words() + (pieces(sent.part()) > 1 ? ", " + pieces(sent.part()) : ""));
    }
    for (Line line : lines) {
      if (line.line().keep()) {
        keep.add(line.line().count() + " " + line.line().what());
      }
    }
    return keep;
  }

  private static int pieces(Part part) {
    return part.pieces();
  }
}
