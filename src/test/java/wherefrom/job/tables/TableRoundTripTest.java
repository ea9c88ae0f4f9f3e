package wherefrom.job.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.Sample;
import wherefrom.job.BearingClearance;
import wherefrom.job.BenchJob;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.photos.Photographing;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopVisit;
import wherefrom.job.timing.LiftReading;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingSetting;
import wherefrom.job.torque.CardTyped;
import wherefrom.job.torque.TorqueBook;
import wherefrom.logbook.LogbookFile;
import wherefrom.parts.Part;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.timing.TimingValue;
import wherefrom.workings.torque.BoltPattern;

/** Every row and every column of each table, beside what the job says of the same thing. */
class TableRoundTripTest {
  private static final OpenJob DEMO =
      new OpenJob(LogbookFile.read(Path.of("demo-data")), Clock.systemUTC());
  private static final EngineJob STATE = DEMO.state();

  private static List<List<String>> rows(OpenJob job, String name) {
    TidyTable table =
        JobTables.of(job).stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    return table.rows().stream().map(row -> row.stream().map(TidyCell::text).toList()).toList();
  }

  private static String time(Instant time) {
    return time.toString().substring(0, 19).replace('T', ' ');
  }

  private static String number(Optional<Amount> amount) {
    return amount.map(one -> one.number().toPlainString()).orElse("");
  }

  private static String unit(Optional<Amount> amount) {
    return amount.map(one -> one.unit().symbol()).orElse("");
  }

  /** The last entry of a kind about a part. */
  private static <E extends JobEntry> String last(
      Class<E> kind, java.util.function.ToIntFunction<E> item, int part) {
    return STATE.standing().stream()
        .filter(logged -> kind.isInstance(logged.entry()))
        .filter(logged -> item.applyAsInt(kind.cast(logged.entry())) == part)
        .reduce((one, two) -> two)
        .map(logged -> time(logged.time()))
        .orElse("");
  }

  @Test
  void parts() {
    List<List<String>> expected = new ArrayList<>();
    for (PartRecord record : STATE.parts()) {
      Part part = record.part();
      String at = STATE.findFittedAt(part.item()).map(place -> place.spot().key()).orElse("");
      expected.add(
          List.of(
              "" + part.item(),
              part.code(STATE.engine()).typed(),
              part.kind().key(),
              part.home().spot().key(),
              part.words(),
              part.fresh() ? "yes" : "no",
              "" + part.pieces(),
              record.where().words(),
              at,
              STATE.bench().worst(part.item()).look().word(),
              record.decision().map(Decision::word).orElse(""),
              last(PartOut.class, PartOut::item, part.item()),
              at.isEmpty() ? "" : last(PartFitted.class, PartFitted::item, part.item())));
    }
    assertThat(rows(DEMO, "parts")).isNotEmpty().isEqualTo(expected);
  }

  /** Kind, place and words of a part or of what carries no tag. */
  private static List<String> about(EngineJob job, Subject subject) {
    if (subject instanceof Subject.AFeature at) {
      return List.of(at.feature().key(), at.where(), at.words());
    }
    Part part = job.getPart(((Subject.APart) subject).item()).part();
    return List.of(part.kind().key(), part.home().spot().key(), part.words());
  }

  private static List<String> row(List<String> first, String... rest) {
    return Stream.concat(first.stream(), Stream.of(rest)).toList();
  }

  @Test
  void readings() {
    List<List<String>> rows = rows(DEMO, "readings");
    List<List<String>> expected = new ArrayList<>();
    for (MeasuredResult result : STATE.measures().all()) {
      result
          .values()
          .forEach(
              value -> expected.add(ReadingRow.of(result, value, about(STATE, result.subject()))));
    }
    assertThat(expected).isNotEmpty();
    int results = expected.size();
    expected.addAll(oilClearances(STATE));
    assertThat(expected).hasSizeGreaterThan(results);
    assertThat(rows).isEqualTo(expected);
  }

  private static List<List<String>> oilClearances(EngineJob job) {
    List<List<String>> rows = new ArrayList<>();
    for (BearingClearance one : new OilClearances(job).list()) {
      Subject.AFeature at = one.journal();
      List<String> about = List.of(at.feature().key(), at.where(), one.words());
      one.range()
          .ifPresent(
              range -> {
                rows.add(clearance(about, "least", range.smallest(), one.judgement()));
                rows.add(clearance(about, "most", range.largest(), one.judgement()));
              });
    }
    return rows;
  }

  private static List<String> clearance(
      List<String> about, String end, ResultValue value, Optional<Judgement> judged) {
    return ReadingRow.ofClearance(about, "oil-clearance", end, value, judged);
  }

  /** At cylinder 3 a piston in its bore, judged; at cylinder 5 one without a size to compare. */
  @Test
  void clearancesOfPairs() {
    BenchJob bench = BenchJob.v8();
    Instruments tools = new Instruments(bench.job);
    tools.list("mic", Dimension.LENGTH, "0.0001 in", "0.0001 in", "0.0001 in");
    tools.limit("piston-to-bore", "clearance", "0.0010", "0.0025", "Manual, page 6-12");
    measure(bench, new Subject.AFeature(Feature.BORE, "B3"), "bore", "3.8710", "3.8712");
    measure(bench, Subject.ofPart(bench.item("piston@B3")), "piston-diameter", "3.8690");
    measure(bench, new Subject.AFeature(Feature.BORE, "B5"), "bore", "3.8710");
    List<List<String>> expected = new ArrayList<>();
    for (PairClearance.At at : pistonToBore(bench).facings()) {
      expected.add(facing(bench, at.facing().key() + "-least", at.least()));
      expected.add(facing(bench, at.facing().key() + "-most", at.most()));
    }
    assertThat(expected).hasSize(4);
    assertThat(rows(bench.job, "readings"))
        .filteredOn(row -> row.get(13).equals("worked out"))
        .isEqualTo(expected);
  }

  private static PairClearance pistonToBore(BenchJob bench) {
    return new PairClearances(bench.job.state())
        .measured().stream()
            .filter(one -> one.pair().key().equals("piston-to-bore") && one.where().equals("B3"))
            .findFirst()
            .orElseThrow();
  }

  private static List<String> facing(BenchJob bench, String end, ResultValue value) {
    Optional<Judgement> judged = pistonToBore(bench).judgement();
    assertThat(judged).isPresent();
    List<String> about = List.of("bore", "B3", "cylinder 3");
    return ReadingRow.ofClearance(about, "piston-to-bore", end, value, judged);
  }

  private static void measure(BenchJob bench, Subject subject, String plan, String... sizes) {
    ReadingPlan readings = ReadingPlans.find(plan).orElseThrow();
    Map<String, List<String>> taken = new LinkedHashMap<>();
    for (int at = 0; at < readings.stations().size(); at++) {
      taken.put(readings.stations().get(at).key(), List.of(sizes[at % sizes.length]));
    }
    assertThat(
            new Measuring(bench.job)
                .take(new Measuring.Entry(subject, plan, "mic", taken, true, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  @Test
  void samples() {
    List<List<String>> expected = new ArrayList<>();
    for (MeasuredResult result : STATE.measures().all()) {
      for (Sample sample : result.samples()) {
        int number = 0;
        for (Amount reading : sample.readings()) {
          expected.add(
              row(
                  about(STATE, result.subject()),
                  result.plan().key(),
                  sample.station().key(),
                  "" + ++number,
                  reading.number().toPlainString(),
                  reading.unit().symbol(),
                  result.tool().name(),
                  time(result.time())));
        }
      }
    }
    assertThat(rows(DEMO, "samples")).isNotEmpty().isEqualTo(expected);
  }

  private static List<String> finding(
      LoggedEntry logged, Subject subject, String check, String answer, String note) {
    List<String> head = List.of("" + logged.sequence(), time(logged.time()));
    String question = Checks.find(check).map(Check::title).orElseThrow();
    return Stream.of(head, about(STATE, subject), List.of(check, question, answer, note))
        .flatMap(List::stream)
        .toList();
  }

  @Test
  void findings() {
    List<List<String>> expected = new ArrayList<>();
    for (LoggedEntry logged : STATE.standing()) {
      if (logged.entry() instanceof LookRecorded look) {
        Subject part = Subject.ofPart(look.item());
        expected.add(finding(logged, part, look.check(), look.look().word(), look.note()));
      } else if (logged.entry() instanceof FeatureLooked look) {
        Subject at = Subject.find(look.subject()).orElseThrow();
        expected.add(finding(logged, at, look.check(), look.look().word(), look.note()));
      }
    }
    assertThat(rows(DEMO, "findings")).isNotEmpty().isEqualTo(expected);
  }

  @Test
  void decisionsAndEvents() {
    List<List<String>> decisions = new ArrayList<>();
    List<List<String>> events = new ArrayList<>();
    for (LoggedEntry logged : STATE.standing()) {
      List<String> head = List.of("" + logged.sequence(), time(logged.time()));
      String kind = EventNames.of(logged.entry().getClass());
      events.add(row(head, kind, EntryWords.of(STATE, logged.entry())));
      if (logged.entry() instanceof DecisionEntry made) {
        for (int item : made.items()) {
          String words = STATE.getPart(item).part().words();
          decisions.add(row(head, "" + item, words, made.decision().word(), made.reason()));
        }
      }
    }
    assertThat(rows(DEMO, "decisions")).isNotEmpty().isEqualTo(decisions);
    assertThat(rows(DEMO, "events")).isNotEmpty().isEqualTo(events);
  }

  @Test
  void costs() {
    List<List<String>> expected = new ArrayList<>();
    MoneyBook book = new MoneyBook(DEMO);
    for (CostLine line : book.lines()) {
      expected.add(
          List.of(
              "" + line.number(),
              line.what().words(),
              line.about(),
              line.state().words(),
              money(line.amount().cents()),
              "EUR",
              "",
              line.note()));
    }
    for (CostItem item : book.toBuy()) {
      String amount = item.priced() ? money(item.amount().cents()) : "";
      expected.add(
          List.of(
              "",
              item.what().words(),
              "",
              "to buy",
              amount,
              "EUR",
              "" + item.pieces(),
              item.because()));
    }
    assertThat(rows(DEMO, "costs")).isNotEmpty().isEqualTo(expected);
  }

  private static String money(long cents) {
    return String.format(Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
  }

  @Test
  void shopAndReturns() {
    List<List<String>> shop = new ArrayList<>();
    for (ShopVisit visit : new MachineShop(DEMO).visits()) {
      String number = "" + visit.number();
      String when = time(visit.sent());
      for (ShopVisit.Sent sent : visit.parts()) {
        String pieces = "" + sent.part().pieces();
        String back = sent.back() ? pieces : "0";
        shop.add(
            List.of(
                number, "", when, sent.part().words(), pieces, sent.wanted(), "", "", "", back));
      }
      for (ShopVisit.Line line : visit.lines()) {
        shop.add(
            List.of(
                number,
                "" + line.line().line(),
                when,
                line.line().what(),
                "" + line.line().count(),
                line.line().wanted(),
                number(line.line().target()),
                number(line.line().tolerance()),
                unit(line.line().target()),
                "" + line.back()));
      }
    }
    List<List<String>> returns = new ArrayList<>();
    for (LoggedEntry logged : STATE.standing()) {
      if (logged.entry() instanceof ShopLineBack back) {
        returns.add(
            List.of(
                "" + back.visit(),
                "" + back.line(),
                "" + back.count(),
                number(back.size()),
                unit(back.size()),
                back.done(),
                time(logged.time())));
      }
    }
    assertThat(rows(DEMO, "shop")).isNotEmpty().isEqualTo(shop);
    assertThat(rows(DEMO, "returns")).isNotEmpty().isEqualTo(returns);
  }

  @Test
  void torque() {
    BenchJob bench = BenchJob.v8();
    TorqueBook book = new TorqueBook(bench.job);
    book.begin(
        new CardTyped(
            "main caps",
            1,
            2,
            BoltPattern.ofRectangle(1, 2).positions(),
            "",
            "oiled",
            List.of("20 N·m", "90 deg"),
            "manual, p. 3"));
    book.tick(1, 1, "A. B.", false);
    book.tick(1, 2, "A. B.", false);
    book.tick(1, 1, "A. B.", false);
    book.tick(1, 2, "A. B.", false);
    book.tick(1, 1, "C. D.", false);
    assertThat(rows(bench.job, "torque"))
        .extracting(row -> row.subList(0, row.size() - 1))
        .containsExactly(
            bolt("1", "1", "to a torque", "20", "N·m", "A. B."),
            bolt("1", "2", "to a torque", "20", "N·m", "A. B."),
            bolt("2", "1", "on by an angle", "90", "deg", "A. B."),
            bolt("2", "2", "on by an angle", "90", "deg", "A. B."),
            bolt("3", "1", "checked by a second person", "", "", "C. D."));
    assertThat(rows(bench.job, "torque"))
        .extracting(row -> row.get(row.size() - 1))
        .containsExactlyElementsOf(
            bench.job.state().standing().stream()
                .skip(bench.job.state().standing().size() - 5)
                .map(logged -> time(logged.time()))
                .toList());
  }

  private static List<String> bolt(
      String stage, String bolt, String what, String value, String unit, String person) {
    return List.of(
        "1",
        "main caps",
        "yes",
        stage,
        bolt,
        what,
        value,
        unit,
        "oiled",
        person,
        "no",
        "manual, p. 3");
  }

  /** A head's bag with two holes, one of them measured, and a bag that nobody drew. */
  @Test
  void bagsAndBigParts() {
    BenchJob bench = BenchJob.v8();
    BigParts parts = new BigParts(bench.job);
    parts.nameUsual();
    parts.off(10, "for the test");
    parts.mark(10, "cast 1234");
    parts.decide(10, Decision.MACHINE, "it is warped");
    Amount length = Amount.of(2.5, Unit.INCH);
    List<BoltHole> holes =
        List.of(
            new BoltHole(1, Optional.of(10), Optional.of(50), Optional.of(length)),
            new BoltHole(2, Optional.empty(), Optional.empty(), Optional.empty()));
    Bags bags = new Bags(bench.job);
    bags.fill(new BagFilled(1, "head bolts", 10, "", 17, holes, "washer", AtAssembly.SEALER));
    bags.fill(new BagFilled(2, "nuts", 0, "starter", 4, List.of(), "", AtAssembly.NOT_SAID));
    bags.move(2, Whereabouts.FITTED, 4, "");
    new Photographing(bench.job).add(Optional.of(Subject.ofBag(1)), "", "p.png", "");
    List<List<String>> rows = rows(bench.job, "bags");
    List<String> head = rows.get(0).subList(2, 9);
    assertThat(head)
        .containsExactly(
            "head bolts", "left head", "17", "out, on the bench", "washer", "thread sealer", "1");
    assertThat(rows.get(0).subList(9, 14)).containsExactly("1", "10", "50", "2.5", "in");
    assertThat(rows.get(1).subList(2, 9)).isEqualTo(head);
    assertThat(rows.get(1).subList(9, 14)).containsExactly("2", "", "", "", "");
    assertThat(rows.get(2).subList(2, 14))
        .containsExactly("nuts", "starter", "4", "fitted", "", "", "0", "", "", "", "", "");
    List<List<String>> big = rows(bench.job, "big-parts");
    assertThat(big).hasSize(21);
    assertThat(big.get(9).subList(2, 10))
        .containsExactly(
            "left head",
            "head",
            "left",
            "out, on the bench",
            "cast 1234",
            "machine",
            "it is warped",
            "0");
    assertThat(big.get(0).subList(2, 10))
        .containsExactly("distributor", "distributor", "", "in the engine", "", "", "", "0");
    assertThat(big.get(0).get(1) + rows.get(2).get(1)).matches("[0-9]{4} [0-9]{2}".repeat(2));
  }

  @Test
  void timing() {
    BenchJob bench = BenchJob.v8();
    TimingBook book = new TimingBook(bench.job);
    book.set(TimingSetting.STATED_LIFT, "0.050 in");
    book.set(TimingSetting.WHEEL, "0.5 deg");
    book.set(TimingSetting.DIAL, "0.0005 in");
    book.set(TimingSetting.ZERO, "0.5 deg");
    lobe(book, new ValveSpot(1, ValveSide.INTAKE), 108);
    lobe(book, new ValveSpot(1, ValveSide.EXHAUST), -112);
    book.cardSource("cam card");
    book.card(TimingValue.INTAKE_CENTRE, "106");
    List<List<String>> rows = rows(bench.job, "timing");
    assertThat(rows).hasSameSizeAs(TimingValue.values());
    for (TimingValue value : TimingValue.values()) {
      List<String> row = rows.get(value.ordinal());
      boolean card = value == TimingValue.INTAKE_CENTRE;
      assertThat(row.subList(0, 2)).containsExactly("1", value.key());
      assertThat(row.get(3)).isEqualTo("deg");
      assertThat(Double.parseDouble(row.get(4))).isPositive();
      assertThat(row.subList(5, 7)).isEqualTo(card ? List.of("106", "cam card") : List.of("", ""));
      assertThat(row.get(7)).isEqualTo(card ? "differs" : "");
    }
    assertThat(Double.parseDouble(rows.get(TimingValue.INTAKE_CENTRE.ordinal()).get(2)))
        .isBetween(107.5, 108.5);
    assertThat(rows(bench.job, "samples")).isEqualTo(lifts(book));
  }

  private static List<List<String>> lifts(TimingBook book) {
    List<List<String>> lifts = new ArrayList<>();
    for (ValveSpot lobe : book.lobes()) {
      for (LiftReading reading : book.readings(lobe)) {
        lifts.add(
            List.of(
                "lobe",
                lobe.key(),
                lobe.words() + ", cam lobe",
                "degree-wheel",
                reading.degrees().text(),
                "1",
                reading.lift().number().toPlainString(),
                "in",
                "degree wheel, dial",
                ""));
      }
    }
    return lifts;
  }

  /** A raised cosine of 276 degrees from seat to seat. */
  private static void lobe(TimingBook book, ValveSpot lobe, int centre) {
    for (int off = -140; off <= 140; off += 10) {
      double lift = Math.abs(off) < 138 ? 0.15 * (1 + Math.cos(Math.PI * off / 138)) : 0;
      book.read(lobe, "" + (centre + off), String.format(Locale.ROOT, "%.4f", lift));
    }
  }
}
