package wherefrom.inspection;

/**
 * Where the limits, tests and rules come from, as shown beside them. All were read in extracts. A
 * limit printed in a manual belongs to that manual's engine and is never one for another.
 */
public final class Sources {
  public static final String PRACTICE = "common practice, no source";
  public static final String MEMORY = "from memory, unverified";

  public static final String TM_653 = "TM 10-3930-653-14&P";
  public static final String TM_237 = "TM 9-2815-237-34";
  public static final String TM_253 = "TM 9-2815-253-24, 3-26.2";
  public static final String TM_225 = "TM 9-2815-225-34&P, 3-196";
  public static final String TM_247 = "TM 9-2815-247-34, WP 0070";
  public static final String TM_256 = "TM 9-2815-256-24, 3-180";
  public static final String TM_346 = "TM 5-3895-346-14";
  public static final String TM_262 = "TM 5-3805-262-34, 4-24";
  public static final String TM_229 = "TM 5-4210-229-14&P, 6-19";
  public static final String TM_255 = "TM 9-2815-255-24";
  public static final String TM_322 = "TM 5-1940-322-24, WP 0160-4";
  public static final String TM_254 = "TM 9-2815-254-24, 3-119";
  public static final String TM_3820 = "TM 5-3820-256-24-5, p. 18";
  public static final String TM_289 = "TM 5-3810-289-34, 3-54";
  public static final String TM_671 = "TM 10-3930-671-24";
  public static final String TM_644 = "TM 10-3930-644-14&P";
  public static final String TM_220 = "TM 5-4210-220-34";
  public static final String TM_300 = "TM 5-4320-300-14, 6-45";
  public static final String TM_604 = "TM 9-6115-604-34, 9-62";
  public static final String TM_359 = "TM 5-3895-359-14&P";
  public static final String TM_8000 = "TM 9-8000, fig. 2-50";
  public static final String TM_673 = "TM 10-3930-673-34, 3-126";
  public static final String TM_397 = "TM 9-4310-397-14, 6-28";
  public static final String TM_545 = "TM 5-6115-545-34";
  public static final String NAVY_14076 = "NAVEDTRA 14076, ch. 3";
  public static final String NAVY_14050 = "NAVEDTRA 14050";
  public static final String FAA_32 = "FAA-H-8083-32, ch. 10";
  public static final String REPAIR_MANUAL = "a repair manual, pp. 3-61/62";
  public static final String OVERHAUL_ARTICLE = "an overhaul article on studs, pushrods, lifters";
  public static final String RING_TIP = "a piston ring maker's tip sheet";
  public static final String ROLLER_GUIDE = "a guide to the reuse of roller lifters";
  public static final String CAM_TIP = "a camshaft maker's tip page";

  private Sources() {}
}
