package wherefrom.job.bags;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/**
 * Gaskets and seals that are always new, as they follow from what was opened (common practice, no
 * source; the engine's service information says which kind, and what else is used once).
 *
 * @param what {@code head gasket}
 * @param article what is bought
 * @param pieces how many
 * @param because what was opened
 */
public record AlwaysNew(String what, Article article, int pieces, List<String> because) {

  /** A kind of gasket. */
  private record Gasket(String what, Article article) {
    static Gasket of(Goods goods) {
      String one = goods == Goods.HEAD_GASKETS ? "head gasket" : goods.words();
      return new Gasket(one, new Article.Known(goods));
    }
  }

  public AlwaysNew {
    because = List.copyOf(because);
  }

  /** One line for each kind of gasket, in the order in which the parts stand in the list. */
  public static List<AlwaysNew> of(BagBook book) {
    Map<Gasket, List<String>> lines = new LinkedHashMap<>();
    for (BigPartRecord record : book.bigParts()) {
      if (record.where() != Whereabouts.IN_ENGINE) {
        gaskets(record.part().name().kind())
            .forEach(
                one -> lines.computeIfAbsent(one, none -> new ArrayList<>()).add(record.words()));
      }
    }
    return lines.entrySet().stream().map(AlwaysNew::line).toList();
  }

  private static AlwaysNew line(Map.Entry<Gasket, List<String>> line) {
    Gasket gasket = line.getKey();
    return new AlwaysNew(gasket.what(), gasket.article(), line.getValue().size(), line.getValue());
  }

  private static List<Gasket> gaskets(BigPartKind kind) {
    return goods(kind).stream().map(Gasket::of).toList();
  }

  private static List<Goods> goods(BigPartKind kind) {
    return switch (kind) {
      case HEAD -> List.of(Goods.HEAD_GASKETS);
      case DISTRIBUTOR -> List.of(Goods.DISTRIBUTOR_GASKET);
      case CARBURETOR -> List.of(Goods.CARBURETOR_GASKET);
      case FUEL_PUMP -> List.of(Goods.FUEL_PUMP_GASKET);
      case EXHAUST -> List.of(Goods.EXHAUST_GASKET);
      case INTAKE -> List.of(Goods.INTAKE_GASKETS);
      case VALVE_COVER -> List.of(Goods.VALVE_COVER_GASKET);
      case LIFTER_COVER -> List.of(Goods.LIFTER_COVER_GASKET);
      case WATER_PUMP -> List.of(Goods.WATER_PUMP_GASKET);
      case FRONT_COVER -> List.of(Goods.FRONT_COVER_GASKET, Goods.FRONT_SEAL);
      case CAMSHAFT -> List.of(Goods.CAM_PLUG);
      case PAN -> List.of(Goods.PAN_GASKETS);
      case OIL_PUMP -> List.of(Goods.OIL_PUMP_GASKET);
      case REAR_SEAL -> List.of(Goods.REAR_SEAL);
      case BRACKET, ROCKER_SHAFT, DAMPER, TIMING_SET, FLYWHEEL, CRANKSHAFT, OWN -> List.of();
    };
  }
}
