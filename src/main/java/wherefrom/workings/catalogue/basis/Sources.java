package wherefrom.workings.catalogue.basis;

import wherefrom.workings.Source;

/** The sources named by several workings. */
public final class Sources {
  public static final Source CYLINDER_VOLUME =
      Source.published("FAA-H-8083-30, mathematics chapter, Figs 1-26 and 1-27");
  public static final Source COMPRESSION_RATIO =
      Source.published("FAA-H-8083-32, chapter 1, Fig 1-38; terms as in a magazine article, 2004");
  public static final Source FASTENER_ARTICLE =
      Source.published("fastener article, 2020: T = K·D·F with K 0.20 dry, 0.15 oiled, ±30 %");

  private Sources() {}
}
