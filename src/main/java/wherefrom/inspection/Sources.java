package wherefrom.inspection;

/**
 * Where the limits, tests and rules come from, as shown beside them. All were read in extracts. A
 * limit printed in a manual belongs to that manual's engine and is never one for another. Manuals
 * of the US Army (TM), the US Navy (NAVEDTRA) and the FAA are named by their numbers.
 */
public final class Sources {
  public static final String PRACTICE = "common practice, no source";
  public static final String MEMORY = "from memory, unverified";

  public static final String TM_653 = "TM 10-3930-653-14&P, 4-28 to 4-41 and specifications";
  public static final String TM_237 = "TM 9-2815-237-34, 2-28";
  public static final String TM_237_BEARINGS = "TM 9-2815-237-34, bearings, before 2-11";
  public static final String TM_253 = "TM 9-2815-253-24, 3-26.2";
  public static final String TM_225 = "TM 9-2815-225-34&P, 3-196";
  public static final String TM_247 = "TM 9-2815-247-34, WP 0070";
  public static final String TM_256 = "TM 9-2815-256-24, 3-180";
  public static final String TM_346 = "TM 5-3895-346-14, Engine Overhaul, Main Bearings";
  public static final String TM_262 = "TM 5-3805-262-34, 4-24";
  public static final String TM_229 = "TM 5-4210-229-14&P, 6-19";
  public static final String TM_259 = "TM 9-2815-259-24, 4-72";
  public static final String TM_322 = "TM 5-1940-322-24, WP 0160-4";
  public static final String TM_254 = "TM 9-2815-254-24, 3-119";
  public static final String TM_3820 = "TM 5-3820-256-24-5, p. 18";
  public static final String TM_289 = "TM 5-3810-289-34, 3-54";
  public static final String TM_671 = "TM 10-3930-671-24, Valves";
  public static final String TM_247_SPRINGS = "TM 9-2815-247-34, WP 0072";
  public static final String TM_219 = "TM 55-1905-219-14-10, 5-368";
  public static final String TM_300 = "TM 5-4320-300-14, 6-45";
  public static final String TM_604 = "TM 9-6115-604-34, 9-62";
  public static final String TM_354_PUMP = "TM 5-4310-354-14, table 5-2";
  public static final String TM_354_RODS = "TM 5-4310-354-14, 7-64";
  public static final String TM_212 = "TM 5-6640-212-14, table 5-4";
  public static final String TM_670 = "TM 9-6115-670-14&P, 5-129";
  public static final String TM_359 = "TM 5-3895-359-14&P";
  public static final String TM_8000 = "TM 9-8000, fig. 2-50";
  public static final String TM_673 = "TM 10-3930-673-34, 3-126";
  public static final String NAVY_14076 = "NAVEDTRA 14076, ch. 3";
  public static final String NAVY_14050 = "NAVEDTRA 14050, ch. 3, operational testing";
  public static final String FAA_32 = "FAA-H-8083-32, ch. 10";
  public static final String TM_549 = "TM 9-4940-549-14&P, 12-14";

  /** Compression and cylinder leakage tests of a gasoline engine. */
  public static final String TM_230 =
      "TM 5-4210-230-14&P-1, Engine Division Service Manual, Addendum 2";

  /** Compression test: ignition off, throttle open, fuel shut; 20 % below the average. */
  public static final String TM_204 = "TM 1-1500-204-23-1, cylinder compression test";

  /** Differential compression test at 80 psi. */
  public static final String AC_43 =
      "FAA AC 43.13-1B, Acceptable Methods, Techniques, and Practices, 1998, 8-14";

  /** What the pointer of a vacuum gauge does. */
  public static final String TM_677 = "TM 9-4910-677-14&P, vacuum gauge readings";

  public static final String TM_272 = "TM 9-2320-272-24-2, table 4-1";

  /** Where a rocker runs on the tip: colored, turned over, looked at. */
  public static final String CIRCLE_TRACK_TIP =
      "circletrack.com, ctrp_0609_pushrod_length, \"Valve Tip\", 2006";

  /** The odd one out of a set. */
  public static final String ODD_ONE =
      "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17, from memory";

  /** A general chapter, which stands in the 1988 Jeep Cherokee's manual, p. 625, as well. */
  public static final String OVERHAUL_MANUAL =
      "Mitsubishi Montero, Service Manual, 1998, general engine overhaul";

  public static final String RING_TIP =
      "Hastings Service Tips, \"Oversize Cylinders\" (P32), undated";
  public static final String ROLLER_GUIDE =
      "\"Guidelines for Reusable Parts: Lifters\" (scribd.com, 553560845), undated";
  public static final String CAM_TIP =
      "brianesser.com, \"Why must I install new lifters with my new camshaft?\", undated";

  private Sources() {}
}
