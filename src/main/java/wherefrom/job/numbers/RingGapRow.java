package wherefrom.job.numbers;

import java.util.Optional;
import wherefrom.quantity.Measured;
import wherefrom.workings.ResultValue;

/**
 * One ring of one bore on the card: what is wanted, what is, what is to be filed off.
 *
 * @param where the bore, such as {@code B3}
 * @param wanted with the uncertainty of the bore, where it follows from it
 * @param gap as read last; empty where it was not read, or the bore was cut since
 * @param toFile wanted less gap; negative where the gap is wider; empty while one is not known
 */
public record RingGapRow(
    Ring ring,
    String where,
    State state,
    Optional<Measured> wanted,
    Optional<Measured> gap,
    Optional<ResultValue> toFile) {

  /** How far a ring is. */
  public enum State {
    NO_BORE("measure the bore"),
    TO_MEASURE("measure the gap"),
    TO_FILE("to file"),
    /** The gap is so near what is wanted that the readings cannot tell. */
    NEAR("near"),
    WIDE_ENOUGH("wide enough"),
    DONE("done");

    private final String words;

    State(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** The name in tables and on the command line. */
    public String id() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  /** The number of the bore. */
  public int cylinder() {
    return Ring.cylinder(where);
  }

  /** {@code cylinder 3, top ring}. */
  public String words() {
    return ring.wordsAt(where);
  }

  /** The same in few words: {@code 3, top ring}. */
  public String brief() {
    return ring.briefAt(where);
  }

  /** Whether it may be ticked: it is not known to be too narrow. */
  public boolean mayBeTicked() {
    return state == State.NEAR || state == State.WIDE_ENOUGH;
  }

  /** {@code wanted 0.0155 in, is 0.0120 in}. */
  public String figures() {
    return "wanted "
        + wanted.map(RingGapRow::text).orElse("unknown")
        + gap.map(is -> ", is " + text(is)).orElse("");
  }

  /** In a sentence: what to do with it. */
  public String sentence() {
    return switch (state) {
      case NO_BORE -> "Measure the bore, or type its size when new.";
      case TO_MEASURE -> "Square the ring in its bore and measure the gap.";
      case TO_FILE -> "File off " + toFileText() + ", then measure again.";
      case NEAR -> "At the wanted gap, as near as the readings tell.";
      case WIDE_ENOUGH -> "Wide enough: do not file it. Much wider? Wrong ring or worn bore: ask.";
      case DONE -> "Done.";
    };
  }

  /** What is to be filed off, without its uncertainty; empty while it is not known. */
  public String toFileText() {
    return toFile.map(value -> value.amount().rounded(value.unit().decimals()).text()).orElse("");
  }

  /** A size in as many places as its unit is shown with. */
  public static String text(Measured measured) {
    return measured.value().rounded(measured.value().unit().decimals()).text();
  }
}
