package wherefrom.job.torque;

import java.util.List;
import java.util.Locale;
import wherefrom.job.EngineJob;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;

/** The torque cards that go with a big part: those whose fastener names it. */
public final class BigPartTorque {
  /** What holds the crank where there are no main caps. */
  private static final String SPLIT_CASE = "case bolt";

  private BigPartTorque() {}

  /** The cards that hold, by number; of a bank only those that name no other bank. */
  public static List<KeptCard> of(EngineJob job, BigPartName name) {
    return TorqueCards.holding(job).stream()
        .filter(card -> isOf(card.card().spec().fastener(), name))
        .filter(card -> !namesOther(job, card.card().spec().fastener(), name))
        .toList();
  }

  private static boolean isOf(String fastener, BigPartName name) {
    String said = fastener.toLowerCase(Locale.ROOT);
    return said.contains(word(name).toLowerCase(Locale.ROOT))
        || (name.kind() == BigPartKind.CRANKSHAFT && said.contains(SPLIT_CASE));
  }

  /** The word of a part that its bolts are called by. */
  private static String word(BigPartName name) {
    return switch (name.kind()) {
      case INTAKE -> "intake";
      case EXHAUST -> "exhaust";
      case PAN -> "pan";
      case REAR_SEAL -> "rear seal";
      case CRANKSHAFT -> "main cap";
      case OWN -> name.own();
      default -> name.kind().word();
    };
  }

  private static boolean namesOther(EngineJob job, String fastener, BigPartName name) {
    boolean ofABank = name.kind() != BigPartKind.OWN && !name.bank().isEmpty();
    return ofABank
        && job.layout().banks().stream()
            .filter(bank -> !bank.name().equals(name.bank()))
            .anyMatch(bank -> fastener.toLowerCase(Locale.ROOT).contains(bank.name()));
  }
}
