package wherefrom.workings.catalogue;

import java.util.List;
import java.util.Optional;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.accept.AcceptReading;
import wherefrom.workings.catalogue.bearing.OilClearance;
import wherefrom.workings.catalogue.bearing.OilClearanceByBore;
import wherefrom.workings.catalogue.bearing.OilClearanceByOneWall;
import wherefrom.workings.catalogue.bearing.StripClearance;
import wherefrom.workings.catalogue.bearing.StripWidth;
import wherefrom.workings.catalogue.bolt.AngleStage;
import wherefrom.workings.catalogue.bolt.PreloadFromTorque;
import wherefrom.workings.catalogue.bolt.TorqueForPreload;
import wherefrom.workings.catalogue.compression.ChamberForRatio;
import wherefrom.workings.catalogue.compression.CompressionRatio;
import wherefrom.workings.catalogue.compression.CylinderCompression;
import wherefrom.workings.catalogue.compression.DeckCut;
import wherefrom.workings.catalogue.compression.HeadCut;
import wherefrom.workings.catalogue.compression.IntakeCorrection;
import wherefrom.workings.catalogue.compression.LeakDown;
import wherefrom.workings.catalogue.compression.OpeningByPour;
import wherefrom.workings.catalogue.compression.RatioAfterCut;
import wherefrom.workings.catalogue.compression.RingGap;
import wherefrom.workings.catalogue.compression.RingGapChange;
import wherefrom.workings.catalogue.compression.SweptVolume;
import wherefrom.workings.catalogue.size.BoreShape;
import wherefrom.workings.catalogue.size.JournalShape;
import wherefrom.workings.catalogue.size.NextUndersize;
import wherefrom.workings.catalogue.timing.CamSlack;
import wherefrom.workings.catalogue.timing.ChainDeflection;
import wherefrom.workings.catalogue.timing.TopDeadCentre;
import wherefrom.workings.catalogue.valvetrain.CoilBind;
import wherefrom.workings.catalogue.valvetrain.PistonToValve;
import wherefrom.workings.catalogue.valvetrain.PushrodLength;
import wherefrom.workings.catalogue.valvetrain.RetainerToSeal;
import wherefrom.workings.catalogue.valvetrain.SpringLoads;
import wherefrom.workings.catalogue.valvetrain.SpringRateByLoads;
import wherefrom.workings.catalogue.valvetrain.SpringRateByWire;
import wherefrom.workings.catalogue.valvetrain.ValveLift;

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
          new CylinderCompression(),
          new LeakDown(),
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

  /** The working with the key, such as {@code compression-ratio}, or with the one it had before. */
  public static Optional<Working> find(String key) {
    return ALL.stream().filter(working -> working.key().equals(today(key))).findFirst();
  }

  /** The key of today of a working; what is none of ours stays as it is. */
  public static String today(String key) {
    return key.equals("top-dead-centre") ? "top-dead-center" : key;
  }
}
