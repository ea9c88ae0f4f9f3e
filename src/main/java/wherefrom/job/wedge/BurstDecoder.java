package wherefrom.job.wedge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds scans in what is typed. It takes every typed character with its time and answers when Enter
 * or Tab comes, or after a pause. Characters can be let through to the focused field meanwhile: the
 * answer says which of them were a scan and must be taken back.
 *
 * <p>An empty answer to Enter or Tab means that the key belonged to a scan given already: it must
 * be kept from the window, as must the Enter of any answer but {@link BurstAnswer.Typing}. Times
 * are milliseconds of any steady clock. For one thread.
 */
public final class BurstDecoder {
  /** Ask {@link #paused} this long after a character: a scanner that sends no Enter has ended. */
  public static final int PAUSE_MS = 150;

  /** Ask {@link #paused} again this long after a character: whatever stands will not be ended. */
  public static final int END_MS = 1000;

  /** After this long, characters have nothing to do with what comes next. */
  static final int FORGET_MS = 2000;

  private static final int MOST_KEYS = 4096;

  private final List<Burst.Key> keys = new ArrayList<>();
  private ScannerSetup setup;
  private BurstReading reading;
  private boolean cardExpected;
  private long tailUntil = Long.MIN_VALUE;
  private long lastAt;

  public BurstDecoder(ScannerSetup setup) {
    this.setup = setup;
    this.reading = new BurstReading(setup);
  }

  /** Reads with another set-up from now on. */
  public void use(ScannerSetup newSetup) {
    setup = newSetup;
    reading = new BurstReading(newSetup);
  }

  /** Whether the next burst of ten different characters is the set-up card. */
  public void expectSetUpCard(boolean expected) {
    cardExpected = expected;
  }

  /**
   * Takes one typed character.
   *
   * @param codePoint the character; carriage return, line feed or tab end a burst
   * @return what has ended with it, in the order it was typed; often nothing
   */
  public List<BurstAnswer> typed(int codePoint, long atMs) {
    boolean stale = atMs - lastAt > FORGET_MS;
    List<BurstAnswer> answers = new ArrayList<>();
    if (stale || keys.size() >= MOST_KEYS) {
      answers.addAll(end(""));
    }
    lastAt = atMs;
    if (!isTerminator(codePoint)) {
      keys.add(new Burst.Key(codePoint, atMs));
      tailUntil = Long.MIN_VALUE;
    } else if (keys.isEmpty() && atMs <= tailUntil) {
      tailUntil = Long.MIN_VALUE;
    } else {
      List<BurstAnswer> ended = end(Character.toString(codePoint));
      expectTail(ended, BurstReading.FASTEST_PERSON_MS);
      answers.addAll(ended);
    }
    return answers;
  }

  /**
   * Tells that nothing was typed since the last character.
   *
   * @return after {@link #PAUSE_MS} whole codes that stand complete, after {@link #END_MS} whatever
   *     stands
   */
  public List<BurstAnswer> paused(long atMs) {
    long pause = atMs - lastAt;
    if (keys.isEmpty() || pause < PAUSE_MS || (pause < END_MS && !isWhole())) {
      return List.of();
    }
    List<BurstAnswer> answers = end("");
    // What is no tag may be a person's fast digits: the Enter after them is theirs.
    boolean perhapsPerson = answers.stream().anyMatch(BurstAnswer.Foreign.class::isInstance);
    expectTail(answers, perhapsPerson ? 0 : FORGET_MS);
    return answers;
  }

  /** A scanner may end with two keys, or with one that comes late: it still belongs to the scan. */
  private void expectTail(List<BurstAnswer> answers, int withinMs) {
    boolean scanned =
        !answers.isEmpty() && !(answers.get(answers.size() - 1) instanceof BurstAnswer.Typing);
    tailUntil = scanned ? lastAt + withinMs : Long.MIN_VALUE;
  }

  private boolean isWhole() {
    Burst burst = new Burst(keys);
    boolean atScannerPace = burst.meanGap(0, burst.size()) <= BurstReading.SLOWEST_SCANNER_MS;
    return atScannerPace
        && (reading.read(burst, "").stream().allMatch(BurstAnswer.Scan.class::isInstance)
            || card(burst).isPresent());
  }

  private List<BurstAnswer> end(String terminator) {
    Burst burst = new Burst(keys);
    keys.clear();
    List<BurstAnswer> answers = reading.read(burst, terminator);
    if (answers.stream().anyMatch(BurstAnswer.Scan.class::isInstance)) {
      return answers;
    }
    Optional<ScannerSetup> learned = card(burst);
    if (learned.isEmpty()) {
      return answers;
    }
    cardExpected = false;
    String typed = burst.text(0, burst.size()) + terminator;
    return List.of(new BurstAnswer.Taught(learned.get(), typed));
  }

  private Optional<ScannerSetup> card(Burst burst) {
    if (cardExpected) {
      return SetUpCard.read(burst, setup);
    }
    boolean fast = burst.longestGap(0, burst.size()) <= BurstReading.FASTEST_PERSON_MS;
    return fast ? SetUpCard.readUnasked(burst, setup) : Optional.empty();
  }

  private static boolean isTerminator(int codePoint) {
    return codePoint == '\r' || codePoint == '\n' || codePoint == '\t';
  }
}
