package wherefrom.job.bags;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Whereabouts;

/**
 * Gaskets and seals that are always new, as they follow from what was opened (common practice, no
 * source; the engine's service information says which kind, and what else is used once).
 *
 * @param what {@code head gasket}
 * @param pieces how many
 * @param because what was opened
 */
public record AlwaysNew(String what, int pieces, List<String> because) {
  public AlwaysNew {
    because = List.copyOf(because);
  }

  /** One line for each kind of gasket, in the order in which the parts stand in the list. */
  public static List<AlwaysNew> of(BagBook book) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    for (BigPartRecord record : book.bigParts()) {
      if (record.where() != Whereabouts.IN_ENGINE) {
        gaskets(record.part().name().kind())
            .forEach(
                what -> lines.computeIfAbsent(what, none -> new ArrayList<>()).add(record.words()));
      }
    }
    return lines.entrySet().stream()
        .map(line -> new AlwaysNew(line.getKey(), line.getValue().size(), line.getValue()))
        .toList();
  }

  private static List<String> gaskets(BigPartKind kind) {
    return switch (kind) {
      case DISTRIBUTOR -> List.of("distributor gasket or O-ring");
      case CARBURETOR -> List.of("carburetor base gasket");
      case FUEL_PUMP -> List.of("fuel pump gasket");
      case EXHAUST -> List.of("exhaust manifold gasket");
      case INTAKE -> List.of("intake manifold gasket set");
      case VALVE_COVER -> List.of("valve cover gasket");
      case LIFTER_COVER -> List.of("lifter cover gasket");
      case HEAD -> List.of("head gasket");
      case WATER_PUMP -> List.of("water pump gasket");
      case FRONT_COVER -> List.of("front cover gasket", "front crank seal");
      case CAMSHAFT -> List.of("cam plug");
      case PAN -> List.of("oil pan gasket set");
      case OIL_PUMP -> List.of("oil pump and pickup gasket or O-ring");
      case REAR_SEAL -> List.of("rear main seal");
      case BRACKET, ROCKER_SHAFT, DAMPER, TIMING_SET, FLYWHEEL, CRANKSHAFT, OWN -> List.of();
    };
  }
}
