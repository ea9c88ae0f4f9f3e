package wherefrom.rules;

/** What keeps a part from being cleared: each has a deed of its own that leads out of it. */
public enum Hold {
  WASHING,
  AT_SHOP,
  LOST,
  TO_MACHINE,
  TO_REPLACE,
  /** Found bad, or looked upon as suspect, and nobody has decided since. */
  FOUND_BAD,
  /** The job asks for a decision on every part. */
  NOT_DECIDED,
  /** A rule forbids it until work is done, as machining a housing with its cap. */
  WORK_OPEN,
  /** A rule's check that nobody has passed. */
  CHECK_OPEN
}
