package wherefrom.workings.catalogue.basis;

import wherefrom.workings.Source;

/** The sources named by several workings. */
public final class Sources {
  public static final Source CYLINDER_VOLUME =
      Source.published(
          "FAA-H-8083-30, Aviation Maintenance Technician Handbook: General, 2008, figs 1-26, 1-27");
  public static final Source COMPRESSION_RATIO =
      Source.published(
          "FAA-H-8083-32, Aviation Maintenance Technician Handbook: Powerplant, vol. 1, 2012, fig."
              + " 1-38; terms as in Circle Track, \"Compression Ratio Rules\", May 2004");
  public static final Source TORQUE =
      Source.published(
          "T = K·D·F, K 0.20 dry, 0.15 oiled: \"Suggested Tightening Torque Values To Produce"
              + " Corresponding Bolt Clamping Loads\" (studylib.net, 26058660), undated; ±30 % lies"
              + " between the ±35 % dry and ±25 % lubricated of J. Failure Analysis and Prevention,"
              + " 2019, doi:10.1007/s11668-019-00693-z");

  private Sources() {}
}
