package wherefrom.job.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Limit;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.ResultKeys;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.CylinderSheet;
import wherefrom.job.pages.RecordColumn;
import wherefrom.job.pages.RecordEngine;
import wherefrom.job.pages.RecordLine;
import wherefrom.job.pages.RecordSet;
import wherefrom.job.pages.RecordSheets;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Puts the record's sheets together. */
final class RecordSheetsMaker {
  private static final List<Feature> OF_VALVE =
      List.of(
          Feature.LOBE,
          Feature.STUD,
          Feature.LIFTER_BORE,
          Feature.VALVE_SEAT,
          Feature.ROCKER_SHAFT,
          Feature.VALVE_TIP);
  private static final List<Feature> OF_BORE =
      List.of(
          Feature.COMPRESSION,
          Feature.ROD_JOURNAL,
          Feature.ROD_HOUSING,
          Feature.BORE,
          Feature.RINGS,
          Feature.CHAMBER);
  private static final List<String> ORDINALS =
      List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth");

  private final OpenJob open;
  private final EngineJob job;
  private final Layout layout;
  private final RecordLines lines;
  private final CylinderEvents events;
  private final RecordPictures pictures;

  RecordSheetsMaker(OpenJob open, RecordPictures pictures) {
    this.open = open;
    this.job = open.state();
    this.layout = job.layout();
    this.lines = new RecordLines(job);
    this.events = new CylinderEvents(open);
    this.pictures = pictures;
  }

  RecordSheets make() {
    return new RecordSheets(
        RecordEngine.of(job),
        new RecordSummary(open).figures(),
        layout.cylinders().stream().map(this::cylinder).toList(),
        new MainsGrid(job, lines).make(),
        others(),
        events.of(0),
        sets(),
        pictures.of(0));
  }

  private CylinderSheet cylinder(int number) {
    List<RecordColumn> columns = new ArrayList<>();
    for (Bank bank : layout.banks()) {
      layout.valvesInOrder(bank).stream()
          .filter(valve -> valve.cylinder() == number)
          .map(this::valve)
          .forEach(columns::add);
    }
    columns.add(bottom(number));
    return new CylinderSheet(
        number, where(number), columns, events.of(number), pictures.of(number));
  }

  /** {@code left bank, second from the front}. */
  private String where(int cylinder) {
    Bank bank = layout.findBank(cylinder).orElseThrow();
    int at = bank.cylinders().indexOf(cylinder);
    String from = at < ORDINALS.size() ? ORDINALS.get(at) : "number " + (at + 1);
    String named = layout.banks().size() > 1 ? bank.name() + " bank, " : "";
    return named + from + " from the front";
  }

  private RecordColumn valve(ValveSpot valve) {
    List<RecordLine> all = new ArrayList<>();
    places(valve).forEach(place -> all.addAll(lines.of(place)));
    OF_VALVE.forEach(feature -> all.addAll(feature(feature, valve.key())));
    return new RecordColumn(valve.figures(), all);
  }

  private RecordColumn bottom(int cylinder) {
    BoreSpot bore = new BoreSpot(cylinder);
    List<RecordLine> all = new ArrayList<>();
    Stream.of(bore, new RodSpot(cylinder, ShellHalf.UPPER), new RodSpot(cylinder, ShellHalf.LOWER))
        .flatMap(this::places)
        .forEach(place -> all.addAll(lines.of(place)));
    OF_BORE.forEach(feature -> all.addAll(feature(feature, bore.key())));
    all.addAll(lines.clearance(new Subject.AFeature(Feature.ROD_JOURNAL, bore.key())));
    return new RecordColumn(cylinder + " bottom end", all);
  }

  private List<RecordLine> feature(Feature feature, String where) {
    return lines.of(new Subject.AFeature(feature, where));
  }

  private Stream<Place> places(Spot spot) {
    return Stream.of(PartKind.values())
        .filter(kind -> job.kinds().contains(kind) && Place.canLive(kind, spot))
        .map(kind -> new Place(kind, spot));
  }

  /** Heads and decks by bank, shafts, cam bearings; what nobody looked at is left out. */
  private List<RecordColumn> others() {
    Map<String, List<RecordLine>> columns = new LinkedHashMap<>();
    for (Feature feature : Feature.values()) {
      boolean ofBank = feature.reach() == Feature.Reach.BANK;
      if (ofBank || feature.reach() == Feature.Reach.WHOLE) {
        for (String where : feature.where(layout)) {
          columns
              .computeIfAbsent(
                  ofBank ? where + " bank" : "Shafts and oil", key -> new ArrayList<>())
              .addAll(feature(feature, where));
        }
      }
    }
    columns.put("Cam bearings", camBearings());
    return columns.entrySet().stream()
        .filter(one -> !one.getValue().isEmpty())
        .map(one -> new RecordColumn(one.getKey(), one.getValue()))
        .toList();
  }

  private List<RecordLine> camBearings() {
    Stream<RecordLine> bearings =
        job.places().stream()
            .filter(place -> place.kind() == PartKind.CAM_BEARING)
            .flatMap(place -> lines.of(place).stream());
    Stream<RecordLine> journals =
        Feature.CAM_JOURNAL.where(layout).stream()
            .flatMap(where -> feature(Feature.CAM_JOURNAL, where).stream());
    return Stream.concat(bearings, journals).toList();
  }

  private List<RecordSet> sets() {
    return ReadingPlans.all().stream()
        .filter(plan -> job.measures().listResults(plan.key()).size() > 1)
        .map(plan -> new RecordSet(plan.key(), plan.title(), limits(plan)))
        .toList();
  }

  private List<String> limits(ReadingPlan plan) {
    List<Limit> typed =
        ResultKeys.of(plan).stream()
            .flatMap(key -> job.measures().findLimit(plan.key(), key.key()).stream())
            .toList();
    return IntStream.range(0, typed.size()).mapToObj(at -> words(plan, typed.get(at))).toList();
  }

  private static String words(ReadingPlan plan, Limit limit) {
    String result = ResultKeys.find(plan, limit.result()).map(ResultKeys.Bounded::words).orElse("");
    boolean same = result.equalsIgnoreCase(plan.title());
    return (same ? "" : result + " ") + limit.words() + " (" + limit.source() + ")";
  }
}
