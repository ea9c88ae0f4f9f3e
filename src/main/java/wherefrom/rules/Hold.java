package wherefrom.rules;

/** What keeps a part from being cleared: each has a deed of its own that leads out of it. */
public enum Hold {
  WASHING("washing", "Check it back from washing first.", WayOut.BACK_FROM_WASHING),
  AT_SHOP("machine shop", "Check it in from the machine shop first.", WayOut.BACK_FROM_SHOP),
  LOST("lost", "Is it in your hand? Say that it is found.", WayOut.FOUND),
  TO_MACHINE(
      "to be machined", "Check it in from the machine shop and decide again.", WayOut.DECIDE),
  TO_REPLACE("to be replaced", "Replace it and fit the new part.", WayOut.NEW_PART),
  /** Found bad, or looked upon as suspect, and nobody has decided since. */
  FOUND_BAD("not decided", "Decide: reuse, machine or replace.", WayOut.DECIDE),
  /** The job asks for a decision on every part. */
  NOT_DECIDED("not decided", "Decide: reuse, machine or replace.", WayOut.DECIDE),
  /** A rule forbids it until work is done, as machining a housing with its cap. */
  WORK_OPEN(
      "work is open", "Have it done and measured. Then record the check.", WayOut.DO_THE_CHECK),
  /** A rule's check that nobody has passed. */
  CHECK_OPEN("check is open", "Do the check and record it.", WayOut.DO_THE_CHECK),
  /** The cap over it is recorded as fitted. */
  CAP_IN("cap is in", "Was the cap off? Say so; it is fitted again later.", WayOut.CAP_WAS_OFF),
  /** A pushrod or rocker cannot be in without its head. */
  HEAD_OFF("head is off", "Put the head on first, or say that it is on.", WayOut.HEAD),
  HEAD_AWAY("head is away", "Get the head back first.", WayOut.HEAD),
  SHAFT_AWAY("shaft is away", "Get the rocker shaft back first.", WayOut.SHAFT),
  /** A shell lies in its cap or its rod. */
  CAP_AWAY("cap is away", "Check its cap back in first.", WayOut.CAP),
  ROD_AWAY("rod is away", "Check its rod back in first.", WayOut.ROD);

  private final String words;
  private final String advice;
  private final WayOut first;

  Hold(String words, String advice, WayOut first) {
    this.words = words;
    this.advice = advice;
    this.first = first;
  }

  /** What is so, in a few words. */
  public String words() {
    return words;
  }

  /** Whether the part is not at hand. */
  public boolean isAway() {
    return this == WASHING || this == AT_SHOP || this == LOST;
  }

  /** What to do, in a sentence or two. */
  public String advice() {
    return advice;
  }

  /** The deed that leads out of it. */
  public WayOut first() {
    return first;
  }
}
