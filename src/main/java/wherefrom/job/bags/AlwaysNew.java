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
    static Gasket of(String what) {
      return new Gasket(what, new Article.Named(what));
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
    return kind == BigPartKind.HEAD
        ? List.of(new Gasket("head gasket", new Article.Known(Goods.HEAD_GASKETS)))
        : named(kind).stream().map(Gasket::of).toList();
  }

  private static List<String> named(BigPartKind kind) {
    return switch (kind) {
      case DISTRIBUTOR -> List.of("distributor gasket or O-ring");
      case CARBURETOR -> List.of("carburetor base gasket");
      case FUEL_PUMP -> List.of("fuel pump gasket");
      case EXHAUST -> List.of("exhaust manifold gasket");
      case INTAKE -> List.of("intake manifold gasket set");
      case VALVE_COVER -> List.of("valve cover gasket");
      case LIFTER_COVER -> List.of("lifter cover gasket");
      case WATER_PUMP -> List.of("water pump gasket");
      case FRONT_COVER -> List.of("front cover gasket", "front crank seal");
      case CAMSHAFT -> List.of("cam plug");
      case PAN -> List.of("oil pan gasket set");
      case OIL_PUMP -> List.of("oil pump and pickup gasket or O-ring");
      case REAR_SEAL -> List.of("rear main seal");
      case HEAD, BRACKET, ROCKER_SHAFT, DAMPER, TIMING_SET, FLYWHEEL, CRANKSHAFT, OWN -> List.of();
    };
  }
}
