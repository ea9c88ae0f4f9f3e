package wherefrom.scan.match;

/**
 * When a match may be believed.
 *
 * <p>The score of a symbol on a grid is the sum over the data modules of its signs times the soft
 * values; the evidence z is that sum over the root of the sum of their squares. What lies under the
 * grid when no issued tag does (another engine's tag, a foreign code, a washer) was not chosen with
 * the issued symbols in mind: were their signs independent fair coins, Hoeffding's inequality would
 * give P(score ≥ z) ≤ exp(-z²/2) whatever the soft values are, one grid or the sum of many.
 *
 * <p><b>How far the signs are from coins.</b> 14 of the 208 data modules (mode and length) and the
 * four of the terminator are the same on every tag, and another engine's tag shares the digits of
 * type, issue and perhaps item: up to 40 modules in all. Those alone bring a clean foreign tag to z
 * = 40/√208 = 2.8, the rest has a deviation of √168/√208 = 0.9. The digits of the engine and their
 * check symbols are no 168 free bits either: seven digits make 23. So the inequality above is the
 * guide to where the bound lies, and the distribution of scores on real grids is what holds it.
 *
 * <p><b>How often chance is asked.</b> A still gives some ten grids, of which one or two fit the
 * pattern of every label; a list has 100 to 300 issued tags. In 200,000 frames that is 5·10⁸
 * chances at {@link #EVIDENCE}, each below 6.1·10⁻¹³ by the inequality, and 10⁸ where the pattern
 * fits, each below 4.6·10⁻¹¹ at {@link #EVIDENCE_IN_PATTERN} (3·10⁻¹² for a normal sum): 0.005
 * wrong readings to be expected at most. A stream looks at fewer grids of each frame than a still,
 * those from other starts round a place that was never read included, and asks once more about the
 * sum; sums of the same tag repeat nearly the same question, so they add less than another factor
 * of two. The clearest symbol there is has z = √208 = 14.4.
 *
 * <p><b>Other starts and the second look.</b> On a still picture on which nothing was read, three
 * places are asked from up to five other starts each, then four as crumpled paper with up to four
 * grids each, and the picture is searched twice more, evened out and softened, where up to two
 * places are asked that way: fifteen grids more, and some thirty that fit the pattern to 0.3 at
 * least. The warp is fitted to the pattern and to what the modules seem to be, never to the list,
 * so what was issued still has no part in how a grid came about and the inequality holds for it as
 * for any other: each grid of its freedom is one more chance, and there are fivefold as many, 0.03
 * wrong readings to be expected at most. The measured tail of scores has them in it. Of relatives
 * it is the lead that more chances bring near, so {@link #SECOND_LOOK} more is wanted of these
 * grids.
 *
 * <p><b>Far round a rod.</b> Four places at most are asked from six starts each as labels that go
 * far round a thin rod, only on a picture on which nothing else was read and only where the pattern
 * of every label fits to {@link #PATTERN}; then three finder patterns from ten starts together,
 * then all places where the frame may cross a rod twice from six: 40 grids more at most, a third
 * more than the second look has. They want {@link #WRAPPED} more of the lead.
 *
 * <p><b>Tags of other jobs.</b> Where still nothing was read, the grids whose pattern fits are
 * asked for the tags of all other jobs: {@link #marginAmong}.
 *
 * <p><b>Relatives.</b> A tag of the same engine shares type, engine and issue with every issued
 * one: about 55 modules, z = 3.8 when clean, and the largest of a hundred such scores comes close
 * to what is wanted. The bound above does not hold for them. They are therefore in the list too, as
 * tags that were not issued: other issues of each item, items that are missing in the list, and
 * hundreds after its last. The one that lies there then wins, or is so near that the lead is too
 * small. A relative that is clear is decoded by its own error correction anyway, whole codewords or
 * module by module, which has the first word.
 */
public final class AcceptanceBound {
  /** Least evidence, in standard deviations of a chance score. */
  public static final double EVIDENCE = 7.5;

  /** Least evidence where the pattern of every label fits well. */
  public static final double EVIDENCE_IN_PATTERN = 6.9;

  /** A fit of the pattern that hardly anything but a label of ours has. */
  public static final double PATTERN = 0.45;

  /** Least lead over the runner-up, in standard deviations. */
  public static final double LEAD = 2.3;

  /** Lead that is wanted beyond the least from other starts round a place and at a second look. */
  public static final double SECOND_LOOK = 0.6;

  /** The same beyond that of a second look where a place is tried as a label round a thin rod. */
  public static final double WRAPPED = 0.6;

  /** Tags of a job for which the bounds are made. */
  private static final double JOB_OF = 128;

  private AcceptanceBound() {}

  /**
   * Whether an issued tag was certainly seen at a first look.
   *
   * @param pattern fit of the pattern of every label, to 1
   */
  public static boolean accepts(SymbolMatch match, double pattern) {
    return accepts(match, pattern, 0);
  }

  /**
   * Whether an issued tag was certainly seen.
   *
   * @param pattern fit of the pattern of every label, to 1
   * @param more lead that is wanted beyond the least, in standard deviations
   */
  public static boolean accepts(SymbolMatch match, double pattern, double more) {
    return match.issued() && margin(match, pattern, more) >= 0;
  }

  /**
   * Whether one of many tags was certainly seen, where a list holds more than a job prints.
   *
   * @param pattern fit of the pattern of every label, to 1; below {@link #PATTERN} none is
   * @param tags that the list holds
   */
  public static boolean acceptsAmong(SymbolMatch match, double pattern, int tags) {
    return match.issued() && pattern >= PATTERN && marginAmong(match, tags) >= 0;
  }

  /**
   * How far evidence and lead lie above what is wanted of one of so many tags, in standard
   * deviations; the lesser of the two counts. A chance score reaches z with probability exp(-z²/2)
   * at most: where z²/2 is larger by the logarithm of how many jobs' tags a list holds, all of them
   * together are as likely to be reached by chance as those of one job. The lead guards against
   * relatives, and what lies there has those of one job only, so it is that of a second look.
   */
  public static double marginAmong(SymbolMatch match, int tags) {
    double more = 2 * Math.log(Math.max(1, tags / JOB_OF));
    double evidence = Math.sqrt(EVIDENCE_IN_PATTERN * EVIDENCE_IN_PATTERN + more);
    return Math.min(match.evidence() - evidence, match.lead() - LEAD - SECOND_LOOK);
  }

  /**
   * How far evidence and lead lie above what is wanted of an issued tag, in standard deviations;
   * the lesser of the two counts.
   *
   * @param pattern fit of the pattern of every label, to 1
   * @param more lead that is wanted beyond the least
   */
  public static double margin(SymbolMatch match, double pattern, double more) {
    double least = pattern >= PATTERN ? EVIDENCE_IN_PATTERN : EVIDENCE;
    return Math.min(match.evidence() - least, match.lead() - LEAD - more);
  }
}
