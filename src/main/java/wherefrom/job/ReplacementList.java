package wherefrom.job;

import static wherefrom.rules.consequence.ChangeKind.FLAT_TO_ROLLER;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Unit;
import wherefrom.rules.Ban;
import wherefrom.workings.ResultValue;

/** What must be bought, with sizes from the readings. */
final class ReplacementList {
  private final EngineJob job;

  ReplacementList(EngineJob job) {
    this.job = job;
  }

  /** One line for each kind; parts that are replaced already are left out. */
  List<Replacement> lines() {
    Map<PartKind, List<Part>> wanted = new EnumMap<>(PartKind.class);
    Map<PartKind, String> reasons = new EnumMap<>(PartKind.class);
    for (PartRecord record : job.parts()) {
      Part part = record.part();
      Optional<Ban> ban = job.rules().findBan(record);
      boolean replace = record.decision().equals(Optional.of(Decision.REPLACE)) || ban.isPresent();
      if (replace && record.where() != Whereabouts.RETIRED) {
        wanted.computeIfAbsent(part.kind(), kind -> new ArrayList<>()).add(part);
        reasons.putIfAbsent(
            part.kind(),
            ban.map(one -> one.rule() + ": " + one.reason()).orElseGet(() -> decided(part)));
      }
    }
    return wanted.entrySet().stream()
        .map(line -> line(line.getKey(), line.getValue(), reasons.getOrDefault(line.getKey(), "")))
        .toList();
  }

  /** {@code decided: dished}. */
  private String decided(Part part) {
    String reason = "";
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof DecisionEntry made && made.items().contains(part.item())) {
        reason = made.reason();
      }
    }
    return reason.isEmpty() ? "decided" : "decided: " + reason;
  }

  private Replacement line(PartKind kind, List<Part> parts, String reason) {
    List<Place> places = parts.stream().map(Part::home).toList();
    int pieces = parts.stream().mapToInt(Part::pieces).sum();
    return new Replacement(kind, places, pieces, size(kind, parts), reason);
  }

  private String size(PartKind kind, List<Part> parts) {
    return switch (kind) {
      case ROD_SHELL -> step(Feature.ROD_JOURNAL, "rod-journal", "undersize");
      case MAIN_SHELL -> step(Feature.MAIN_JOURNAL, "main-journal", "undersize");
      case PISTON -> step(Feature.BORE, "bore", "oversize");
      default -> likeTheOld(kind, parts);
    };
  }

  /** A bent or worn part does not tell its own size; nor does one of another sort than the new. */
  private String likeTheOld(PartKind kind, List<Part> parts) {
    boolean conversion =
        job.rules().all().stream()
            .map(StandingRule::consequence)
            .anyMatch(one -> one.effect().bans() && one.cause().kind() == FLAT_TO_ROLLER);
    if (conversion && kind == PartKind.LIFTER) {
      return "roller lifters, to suit the cam";
    }
    if (conversion && kind == PartKind.PUSHROD) {
      return "not known: find the length with a checking pushrod first";
    }
    boolean allSound = parts.stream().noneMatch(this::isFailed);
    return allSound
        ? "as the old one; where that is damaged, measure a sound neighbour"
        : "as the old one was; measure a sound neighbour";
  }

  private boolean isFailed(Part part) {
    boolean byLook = job.getPart(part.item()).looks().containsValue(Look.FAIL);
    return byLook
        || job.measures().listResults(Subject.ofPart(part.item())).stream()
            .anyMatch(result -> result.worst() == Look.FAIL);
  }

  /** The largest step that any of them needs: all alike. */
  private String step(Feature feature, String plan, String key) {
    List<MeasuredResult> results = job.measures().listResults(plan);
    int wanted = feature.where(job.layout()).size();
    if (results.size() < wanted) {
      return "not known: "
          + (wanted - results.size())
          + " of "
          + wanted
          + " "
          + feature.word()
          + (wanted == 1 ? "" : "s")
          + " not measured";
    }
    if (results.stream().anyMatch(result -> result.findValue(key).isEmpty())) {
      return job.measures().findSize(plan).isEmpty()
          ? "not known: type the standard size of the " + feature.word() + " first"
          : "not known: worn past the last usual step, or a station was left out";
    }
    ResultValue most =
        results.stream()
            .map(result -> result.findValue(key).orElseThrow())
            .max(Comparator.comparingDouble(value -> value.amount().in(Unit.MILLIMETRE)))
            .orElseThrow();
    return most.value() == 0
        ? "standard"
        : most.amount().rounded(most.unit() == Unit.MILLIMETRE ? 2 : 3).text() + " " + key;
  }
}
