package wherefrom.job.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.PartNumberTyped;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.size.GoodsSize;

/** The numbers on boxes, typed or scanned once, by which what comes is told again. */
public final class PartNumbers {
  private static final int MOST = 40;

  private static final EntryFold<PartNumbers> READS =
      EntryFold.<PartNumbers>none()
          .on(PartNumberTyped.class, (numbers, it) -> numbers.typed.add(it));

  private final List<PartNumberTyped> typed = new ArrayList<>();

  private PartNumbers() {}

  public static PartNumbers of(EngineJob job) {
    return job.remember(PartNumbers.class, state -> READS.all(new PartNumbers(), state.standing()));
  }

  /** The numbers of a thing in a size, in the order typed. */
  List<String> list(Article what, GoodsSize size) {
    return typed.stream()
        .filter(one -> one.what().equals(what) && one.size().equals(size))
        .map(PartNumberTyped::number)
        .toList();
  }

  /** The line that a number on a box belongs to; of several alike the first that wants more. */
  public static Optional<BuyLine> find(EngineJob job, String number) {
    List<BuyLine> found =
        new Buying(job)
            .lines().stream()
                .filter(line -> line.numbers().stream().anyMatch(one -> isSame(one, number)))
                .toList();
    return found.stream()
        .filter(line -> line.open() > 0)
        .findFirst()
        .or(() -> found.stream().findFirst());
  }

  /** What to do with a number that no line has. */
  public static String unknown(EngineJob job, String number) {
    boolean asked = of(job).typed.stream().anyMatch(one -> isSame(one.number(), number));
    return asked
        ? "Number " + number + " is of a size that the list no longer asks for. Send it back."
        : "Wrong: no line has number " + number + ". Compare the box with the list.";
  }

  /** Keeps the number of a line; the sentence says what is wrong, empty where it is kept. */
  public static Optional<String> keep(OpenJob job, BuyLine line, String number) {
    return job.asOne(() -> keepOnce(job, line, number));
  }

  private static Optional<String> keepOnce(OpenJob job, BuyLine line, String number) {
    String text = number.strip();
    if (text.isEmpty() || text.length() > MOST) {
      return Optional.of("Scan or type the number on the box, up to " + MOST + " characters.");
    }
    Optional<BuyLine> other = find(job.state(), text);
    if (other.isPresent() && !other.get().isAlike(line)) {
      return Optional.of(text + " is the number of " + other.get().words() + " already.");
    }
    if (other.isEmpty()) {
      job.record(new PartNumberTyped(line.what(), line.size(), text));
    }
    return Optional.empty();
  }

  /** Spaces, hyphens and capitals are printed one way and coded another, as are leading zeros. */
  private static boolean isSame(String one, String other) {
    return plain(one).equals(plain(other));
  }

  private static String plain(String number) {
    String plain = number.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    return plain.matches("[0-9]+") ? plain.replaceFirst("^0+(?!$)", "") : plain;
  }
}
