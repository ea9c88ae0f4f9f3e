package wherefrom.workings.catalogue;

import java.util.List;
import java.util.Optional;
import wherefrom.workings.Working;

/** Every working there is, in the order a rebuild meets them. */
public final class Workings {
  private static final List<Working> ALL =
      List.of(
          new SweptVolume(),
          new CompressionRatio(),
          new ChamberForRatio(),
          new HeadCut(),
          new OpeningByPour(),
          new DeckCut(),
          new RatioAfterCut(),
          new IntakeCorrection(),
          new ValveLift(),
          new CoilBind(),
          new RetainerToSeal(),
          new SpringRateByLoads(),
          new SpringRateByWire(),
          new SpringLoads(),
          new PushrodLength(),
          new OilClearance(),
          new OilClearanceByOneWall(),
          new OilClearanceByBore(),
          new NextUndersize(),
          new StripClearance(),
          new StripWidth(),
          new TorqueForPreload(),
          new PreloadFromTorque(),
          new AngleStage(),
          new RingGap(),
          new RingGapChange(),
          new BoreShape(),
          new JournalShape(),
          new PistonToValve(),
          new ChainDeflection(),
          new CamSlack(),
          new TopDeadCentre(),
          new AcceptReading());

  private Workings() {}

  public static List<Working> all() {
    return ALL;
  }

  /** The working with the key, such as {@code compression-ratio}. */
  public static Optional<Working> find(String key) {
    return ALL.stream().filter(working -> working.key().equals(key)).findFirst();
  }
}
