package wherefrom.job.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.ShellHalf;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.BearingClearance;
import wherefrom.job.EngineJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.pages.RecordLine;
import wherefrom.job.pages.RecordSection;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.workings.ResultValue;

/** What the record says of a place or a feature, line by line. */
final class RecordLines {
  private final EngineJob job;
  private final Map<String, Map<String, Look>> looks = new LinkedHashMap<>();

  RecordLines(EngineJob job) {
    this.job = job;
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof FeatureLooked look) {
        looks
            .computeIfAbsent(look.subject(), key -> new LinkedHashMap<>())
            .put(look.check(), look.look());
      }
    }
  }

  /** The part that is there or belongs there, and those that it took the place of. */
  List<RecordLine> of(Place place) {
    List<RecordLine> lines = new ArrayList<>();
    Optional<Part> here = job.findSeated(place);
    here.ifPresent(part -> lines.addAll(part(job.getPart(part.item()), place, "")));
    job.findOwner(place)
        .filter(owner -> !here.equals(Optional.of(owner)))
        .ifPresent(owner -> lines.addAll(away(owner, place, here.isPresent())));
    for (PartRecord old : job.parts()) {
      if (old.where() == Whereabouts.RETIRED && old.part().home().equals(place)) {
        lines.add(RecordLine.ofPart(name(place) + ", old", old.note(), Look.NOT_LOOKED, true));
        lines.addAll(results(Subject.ofPart(old.part().item()), ", old", true));
      }
    }
    return lines;
  }

  /** A part that belongs here: where another part sits its own sheet has the rest of it. */
  private List<RecordLine> away(Part owner, Place place, boolean taken) {
    Optional<Place> elsewhere = job.findSeat(owner.item());
    if (elsewhere.isPresent()) {
      String told = "fitted at " + elsewhere.get().brief();
      return List.of(RecordLine.ofPart(name(place) + ", own", told, Look.NOT_LOOKED, false));
    }
    return part(job.getPart(owner.item()), place, taken ? ", own, not in" : "");
  }

  private List<RecordLine> part(PartRecord record, Place place, String which) {
    List<RecordLine> lines = new ArrayList<>();
    Part part = record.part();
    String from = part.home().equals(place) ? "" : ", from " + part.home().brief();
    String name = name(place) + (part.fresh() ? ", new" : from) + which;
    Look look = job.bench().worst(part.item()).look();
    lines.add(RecordLine.ofPart(name, told(record, look), look, false));
    lines.addAll(results(Subject.ofPart(part.item()), half(place) + which, false));
    new PairClearances(job)
        .find(Subject.ofPart(part.item())).stream()
            .filter(pair -> pair.pair().isOfPartsAround(part.kind()))
            .forEach(pair -> lines.addAll(pair(pair)));
    return lines;
  }

  private static String name(Place place) {
    return switch (place.kind()) {
      case ROD_SHELL, MAIN_SHELL -> place.shell();
      default -> place.kind().word();
    };
  }

  /** Which of two shells it is, where their results stand below each other. */
  private static String half(Place place) {
    return switch (place.kind()) {
      case ROD_SHELL, MAIN_SHELL -> ", " + place.spot().findHalf().map(ShellHalf::word).orElse("");
      default -> "";
    };
  }

  private String told(PartRecord record, Look look) {
    String away =
        switch (record.where()) {
          case WASHING -> ", washing";
          case AT_SHOP -> ", at the shop";
          case LOST -> ", lost";
          default -> "";
        };
    return record.decision().map(Decision::word).orElseGet(() -> undecided(record, look)) + away;
  }

  private static String undecided(PartRecord record, Look look) {
    if (record.part().fresh()) {
      return "bought";
    }
    return look == Look.NOT_LOOKED ? RecordSection.NOT_CHECKED : "not decided";
  }

  /** Its worst answer where it was looked at, and its results; nothing where it never was. */
  List<RecordLine> of(Subject.AFeature at) {
    List<RecordLine> lines = new ArrayList<>();
    Look worst =
        looks.getOrDefault(at.key(), Map.of()).values().stream()
            .max(Look::compareTo)
            .orElse(Look.NOT_LOOKED);
    if (worst != Look.NOT_LOOKED) {
      lines.add(RecordLine.ofPart(at.feature().word(), worst.word(), worst, false));
    }
    lines.addAll(results(at, "", false));
    new PairClearances(job).find(at).forEach(pair -> lines.addAll(pair(pair)));
    return lines;
  }

  /** The oil clearance of the bearing on a journal, where it is known. */
  List<RecordLine> clearance(Subject.AFeature journal) {
    BearingClearance found = new OilClearances(job).find(journal).orElseThrow();
    if (found.judgement().isPresent()) {
      return List.of(ResultLines.judged("oil clearance", found.judgement().get(), false));
    }
    return found
        .range()
        .map(range -> List.of(ResultLines.figure("oil clearance", range.largest(), false)))
        .orElse(List.of());
  }

  /** The clearance of a pair, where it is known; the least of it where one would not go in. */
  private static List<RecordLine> pair(PairClearance found) {
    String name = found.pair().title().toLowerCase(Locale.ROOT);
    if (!found.said().isEmpty() && found.range().isPresent()) {
      String least = figure(found.range().get().smallest());
      String tight = name + ", would not go in";
      return List.of(new RecordLine(tight, least, found.look(), false, false, Optional.empty()));
    }
    return found
        .judgement()
        .map(one -> ResultLines.judged(name, one, false))
        .or(() -> found.range().map(range -> ResultLines.figure(name, range.largest(), false)))
        .map(List::of)
        .orElse(List.of());
  }

  private List<RecordLine> results(Subject subject, String which, boolean old) {
    List<RecordLine> lines = new ArrayList<>();
    for (MeasuredResult result : job.measures().listResults(subject)) {
      lines.addAll(new ResultLines(result, which, old).list());
    }
    return lines;
  }

  /** The figure of a result without its uncertainty, in as many places as that allows. */
  static String figure(ResultValue value) {
    return value.valueText();
  }
}
