package wherefrom.workings.catalogue.basis;

import wherefrom.workings.Source;

/** The sources named by several workings. */
public final class WorkingSources {
  public static final Source CYLINDER_VOLUME =
      Source.published(
          "FAA-H-8083-30, Aviation Maintenance Technician Handbook: General, 2008, figs 1-26, 1-27");
  public static final Source COMPRESSION_RATIO =
      Source.published(
          "FAA-H-8083-32, Aviation Maintenance Technician Handbook: Powerplant, vol. 1, 2012, fig."
              + " 1-38; terms as in Circle Track, \"Compression Ratio Rules\", May 2004");
  public static final Source TORQUE =
      Source.published(
          "\"Suggested Tightening Torque Values To Produce Corresponding Bolt Clamping Loads\""
              + " (studylib.net, 26058660), undated: K 0.20 dry, 0.15 oiled; ±30 % is common"
              + " practice, no source");

  private WorkingSources() {}
}
