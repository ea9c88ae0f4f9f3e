package wherefrom.job.puttogether;

/** How the two halves of a fit are named. */
public enum FitMode {
  /** The next place is named; the part is scanned. */
  FOLLOW_THE_LIST,
  /** Part and place card, in either order. */
  SCAN_BOTH,
  /** Only shows where a part goes; nothing is logged. */
  WHERE_DOES_THIS_GO
}
