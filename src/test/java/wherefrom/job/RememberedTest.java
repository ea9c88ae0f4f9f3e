package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.job.bags.BagBook;
import wherefrom.job.change.Bought;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.GasketsListed;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OfferTyped;
import wherefrom.job.entry.PartNumberTyped;
import wherefrom.job.entry.SetHolds;
import wherefrom.job.entry.TakenBack;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.money.Buying;
import wherefrom.job.money.GasketSet;
import wherefrom.job.money.MoneyBook;
import wherefrom.logbook.LogbookFile;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.size.GoodsSize;
import wherefrom.ui.subject.Group;

/** What is remembered of a state is never older than its last entry, nor of another job. */
class RememberedTest {
  private static final Clock CLOCK = Clock.systemUTC();

  private record Counted(int entries) {
    static Counted of(EngineJob job) {
      return new Counted(job.standing().size());
    }
  }

  private static List<JobEntry> demo() {
    try (OpenJob demo = new OpenJob(LogbookFile.read(Path.of("demo-data")), Clock.systemUTC())) {
      return demo.history().stream()
          .map(LoggedEntry::entry)
          .filter(entry -> !(entry instanceof TakenBack))
          .toList();
    }
  }

  /** What the demo has not done. */
  private static List<JobEntry> further() {
    Article seals = new Article.Known(Goods.SEALS);
    BigPartName head = new BigPartName(BigPartKind.HEAD, "left", "");
    return List.of(
        new BigPartsNamed(1, List.of(head)),
        new BigPartMoved(1, Whereabouts.OUT, ""),
        new BagFilled(1, "head bolts", 1, "", 10, List.of(), "", AtAssembly.NOT_SAID),
        new GasketsListed(true),
        new OfferTyped("one supplier", seals, 2, 990),
        new PartNumberTyped(seals, GoodsSize.none(), "11-22"),
        new SetHolds(seals, 1),
        new GoodsArrived(new Article.Known(Goods.GASKET_SET), GoodsSize.none(), 1, "", true),
        new KindsTracked(Set.of(PartKind.VALVE), 0, List.of()),
        new NoteAdded(0, "the end"));
  }

  /** All that rooms have remembered for them, in words that tell two of a kind apart. */
  private static Map<String, String> seen(OpenJob job) {
    EngineJob state = job.state();
    Buying buying = new Buying(state);
    Map<String, String> seen = new LinkedHashMap<>();
    seen.put("standing", "" + state.standing());
    seen.put("measured", "" + state.measures().all());
    seen.put("changes", "" + MadeChanges.of(state));
    seen.put("pairs", "" + new PairClearances(state).measured());
    seen.put("unlooked", "" + new Inspecting(job).listUnlooked());
    seen.put("groups", "" + Group.of(state));
    seen.put("bags", "" + List.copyOf(BagBook.of(state).bags()) + BagBook.of(state).tags());
    seen.put("big parts", "" + List.copyOf(BagBook.of(state).bigParts()));
    seen.put("gaskets", "" + GasketSet.of(state).candidates());
    seen.put("buying", "" + buying.lines() + buying.offers());
    seen.put("budget", "" + new MoneyBook(job).budget() + new MoneyBook(job).prices());
    seen.put("list", "" + new Deciding(job).replacements() + new Deciding(job).purchases());
    List<String> parts = new ArrayList<>();
    for (PartRecord record : state.parts()) {
      Part part = record.part();
      parts.add(
          new Deciding(job).propose(part.item()).toString()
              + Bought.of(state).findSort(part)
              + new Deciding(job).isMeasured(part.item()));
    }
    seen.put("parts", "" + parts);
    return seen;
  }

  @Test
  void afterEveryKindOfEntryItIsWhatAJobReadAnewSays() {
    List<JobEntry> entries = new ArrayList<>(demo());
    entries.addAll(further());
    MemoryLogbook logbook = new MemoryLogbook();
    logbook.append(CLOCK.instant(), entries.get(0));
    OpenJob job = new OpenJob(logbook, CLOCK);
    Set<Class<?>> kinds = new HashSet<>();
    Map<String, Set<String>> ever = new LinkedHashMap<>();
    for (JobEntry next : entries.subList(1, entries.size())) {
      boolean looked = kinds.add(next.getClass()) || further().contains(next);
      if (looked) {
        seen(job).forEach((what, is) -> ever.computeIfAbsent(what, w -> new HashSet<>()).add(is));
      }
      job.record(next);
      if (looked) {
        assertThat(seen(job)).as("%s", next).isEqualTo(seen(new OpenJob(logbook, CLOCK)));
      }
    }
    assertThat(kinds).hasSizeGreaterThan(25);
    // What never changed would be the same however long it were remembered.
    assertThat(ever.keySet()).allSatisfy(what -> assertThat(ever.get(what)).hasSizeGreaterThan(1));
  }

  @Test
  void itIsWorkedOutOnceUntilTheNextEntryAndForEachJobAlone() {
    OpenJob job = BenchJob.v8().job;
    Counted first = job.state().remember(Counted.class, Counted::of);
    assertThat(job.state().remember(Counted.class, Counted::of)).isSameAs(first);
    assertThat(job.state().copy().remember(Counted.class, Counted::of)).isNotSameAs(first);
    job.record(new NoteAdded(0, "seen"));
    assertThat(job.state().remember(Counted.class, Counted::of))
        .isEqualTo(new Counted(first.entries() + 1));
    job.undo();
    assertThat(job.state().remember(Counted.class, Counted::of)).isEqualTo(first);
  }

  @Test
  void whatIsBeingWorkedOutWhenAnEntryComesIsKeptForNobody() {
    OpenJob job = BenchJob.v8().job;
    Counted late =
        job.state()
            .remember(
                Counted.class,
                state -> {
                  Counted before = Counted.of(state);
                  job.record(new NoteAdded(0, "meanwhile"));
                  return before;
                });
    assertThat(job.state().remember(Counted.class, Counted::of))
        .isEqualTo(new Counted(late.entries() + 1));
  }
}
