package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Section;
import wherefrom.engine.ValveSide;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Feature;
import wherefrom.inspection.measure.LimitTarget;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.numbers.BobWeight;
import wherefrom.job.numbers.Ring;
import wherefrom.job.numbers.RingFiling;
import wherefrom.parts.PartKind;
import wherefrom.parts.Places;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ConsequenceRules;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.consequence.KnownCheck;
import wherefrom.rules.consequence.Setting;
import wherefrom.rules.debris.Opening;
import wherefrom.rules.size.GoodsSize;
import wherefrom.workings.ChoiceInput;
import wherefrom.workings.InputSpec;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.Workings;
import wherefrom.workings.plan.PlanWorking;

/**
 * The format, whole: {@code every-entry.jsonl} is a logbook file with every kind of entry, its
 * fields and their forms; {@code every-name.txt} holds the names that stand in such files. A line
 * that is there never changes; new ones are added. A name that is written no more is listed as one
 * that is read. Where a field got another form, the whole file of before stays beside it, as {@code
 * before-….jsonl}, and is read as the same entries.
 */
class GoldenFormatTest {
  private static final Path GOLDEN = Path.of("src", "test", "resources", "wherefrom", "logbook");
  private static final Instant TIME = Instant.parse("2026-03-01T12:00:00.250Z");

  @TempDir Path folder;

  private static List<String> lines() throws IOException {
    return Files.readAllLines(GOLDEN.resolve("every-entry.jsonl"));
  }

  @Test
  void everyKindOfEntryStandsInTheFile() {
    Set<Class<?>> shown = new HashSet<>();
    EveryEntry.all().forEach(entry -> shown.add(entry.getClass()));
    assertThat(shown).containsExactlyInAnyOrder(JobEntry.class.getPermittedSubclasses());
  }

  @Test
  void whatIsWrittenIsTheFileLineByLine() throws IOException {
    List<String> golden = lines();
    List<String> written = new ArrayList<>(List.of(golden.get(0)));
    for (JobEntry entry : EveryEntry.all()) {
      String before = Sums.chain(last(written).getBytes(StandardCharsets.UTF_8));
      LoggedEntry logged = new LoggedEntry(written.size(), TIME, entry);
      written.add(new String(LogLine.of(logged, before), StandardCharsets.UTF_8));
    }
    assertThat(String.join("\n", written)).isEqualTo(String.join("\n", golden));
  }

  private static String last(List<String> lines) {
    return lines.get(lines.size() - 1);
  }

  @Test
  void whatIsReadFromTheFileIsEqual() throws IOException {
    requireEveryEntryIn("every-entry.jsonl");
  }

  /** A file of when the size of goods stood in the words that were shown. */
  @Test
  void whatWasWrittenInAnEarlierFormIsReadAsTheSame() throws IOException {
    requireEveryEntryIn("before-sizes.jsonl");
  }

  private void requireEveryEntryIn(String file) throws IOException {
    Path job = Files.createDirectory(folder.resolve("job"));
    Files.copy(GOLDEN.resolve(file), job.resolve(LogFiles.name(1)));
    try (LogbookFile logbook = LogbookFile.open(job)) {
      assertThat(logbook.condition()).isInstanceOf(LogbookCondition.Sound.class);
      assertThat(logbook.entries()).extracting(LoggedEntry::entry).isEqualTo(EveryEntry.all());
    }
  }

  @Test
  void everyNameThatIsWrittenIsListed() throws IOException {
    List<String> names = new ArrayList<>();
    enums()
        .forEach(
            (type, constants) ->
                Arrays.stream(constants)
                    .forEach(constant -> names.add(type + ": " + written(constant))));
    EntryTypes.all().keySet().stream().sorted().forEach(name -> names.add("type: " + name));
    names.addAll(keys());
    List<String> listed = Files.readAllLines(GOLDEN.resolve("every-name.txt"));
    assertThat(names.stream().filter(name -> !listed.contains(name))).as("not listed").isEmpty();
    assertThat(listed.stream().filter(name -> !names.contains(name))).as("not written").isEmpty();
    assertThat(names).isEqualTo(listed);
  }

  /** Names that stand in texts: of checks, plans of readings, rules, debris, sheets of figures. */
  private static Set<String> keys() {
    Set<String> keys = new TreeSet<>();
    Arrays.stream(Feature.values()).forEach(feature -> keys.add("feature: " + feature.key()));
    Arrays.stream(Goods.values()).forEach(goods -> keys.add("goods: " + goods.id()));
    sizes().forEach(size -> keys.add("size of goods: " + size.id()));
    Checks.all().forEach(check -> keys.add("check: " + check.key()));
    Arrays.stream(Opening.values()).forEach(opening -> keys.add("opening: " + opening.check()));
    for (ReadingPlan plan : ReadingPlans.all()) {
      plan.stations().forEach(one -> keys.add("station: " + plan.key() + " " + one.key()));
    }
    for (LimitTarget target : LimitTarget.all()) {
      target.results().forEach(one -> keys.add("result: " + target.key() + " " + one.key()));
    }
    Arrays.stream(BobWeight.Typed.values())
        .forEach(typed -> keys.add("sheet: bob-weight " + typed.id()));
    RingFiling.SHEETS.forEach(sheet -> keys.add("sheet: " + sheet));
    Arrays.stream(Ring.values()).forEach(ring -> keys.add("sheet: ring " + ring.id()));
    for (Working working : Workings.all()) {
      working.card().inputs().forEach(one -> keys.add("input: " + working.key() + " " + one.key()));
      keys.addAll(choices(working.key(), working.card().inputs()));
    }
    // Names of before that are read still.
    Workings.find("top-dead-centre")
        .ifPresent(now -> keys.add("read as " + now.key() + ": top-dead-centre"));
    new PlanWorking().card().inputs().forEach(one -> keys.add("input: plan " + one.key()));
    keys.addAll(choices("plan", new PlanWorking().card().inputs()));
    keys.addAll(typedGoods());
    for (Layout layout : ReadyLayouts.all()) {
      Section.all(layout).forEach(section -> keys.add("section: " + section.key()));
      keys.addAll(consequences(layout));
    }
    return keys;
  }

  /** What is chosen in a sheet of figures stands there in the word of its key. */
  private static List<String> choices(String sheet, List<? extends InputSpec> inputs) {
    return inputs.stream()
        .filter(ChoiceInput.class::isInstance)
        .map(ChoiceInput.class::cast)
        .flatMap(input -> input.choices().stream().map(word -> input.key() + " " + word))
        .map(choice -> "choice: " + sheet + " " + choice)
        .toList();
  }

  /** Before things had ids, prices lay under what was typed for them: it is read as them still. */
  private static Set<String> typedGoods() {
    Set<String> typed = new TreeSet<>();
    for (PartKind kind : PartKind.values()) {
      for (String word : List.of(kind.key(), kind.word(), kind.plural())) {
        typed.add("read as " + Article.read(word).id() + ": " + word);
      }
    }
    Arrays.stream(Goods.values())
        .filter(goods -> !goods.id().equals(goods.words()))
        .forEach(
            goods ->
                typed.add("read as " + Article.read(goods.words()).id() + ": " + goods.words()));
    return typed;
  }

  private static List<GoodsSize> sizes() {
    List<GoodsSize> sizes = new ArrayList<>(List.of(GoodsSize.standard()));
    Arrays.stream(ValveSide.values()).map(GoodsSize.OfSide::new).forEach(sizes::add);
    for (GoodsSize.Sense sense : GoodsSize.Sense.values()) {
      sizes.add(GoodsSize.of(sense, Amount.of("0.010", Unit.INCH)));
    }
    return sizes;
  }

  private static Set<String> consequences(Layout layout) {
    Setting setting = new Setting(layout, Places.of(layout, PartKind.all()));
    return Arrays.stream(ChangeKind.values())
        .flatMap(kind -> ConsequenceRules.of(Change.of(kind), setting).stream())
        .map(one -> "consequence: " + one.rule() + ":" + one.name())
        .collect(Collectors.toSet());
  }

  @Test
  void everyCheckThatIsKnownByItsNameIsAskedByARule() {
    for (KnownCheck known : KnownCheck.values()) {
      assertThat(keys()).contains("consequence: " + known.rule() + ":" + known.id());
    }
  }

  private static String written(Object constant) {
    // A unit stands in a field of its own, as it stands after a figure.
    return constant instanceof Unit unit
        ? unit.symbol()
        : EntryCodec.MAPPER.valueToTree(constant).asText();
  }

  /** Every enum that a field of an entry can hold, by the name of its class. */
  private static Map<String, Object[]> enums() {
    Map<String, Object[]> found = new TreeMap<>();
    for (Class<?> kind : JobEntry.class.getPermittedSubclasses()) {
      collect(kind, found, new HashSet<>());
    }
    return found;
  }

  private static void collect(Type type, Map<String, Object[]> found, Set<Type> seen) {
    if (!seen.add(type)) {
      return;
    }
    if (type instanceof ParameterizedType generic) {
      Arrays.stream(generic.getActualTypeArguments()).forEach(of -> collect(of, found, seen));
    } else if (type instanceof Class<?> raw && raw.isEnum()) {
      found.put(raw.getSimpleName(), raw.getEnumConstants());
    } else if (type instanceof Class<?> raw && raw.isRecord()) {
      for (RecordComponent component : raw.getRecordComponents()) {
        collect(component.getGenericType(), found, seen);
      }
    }
  }
}
