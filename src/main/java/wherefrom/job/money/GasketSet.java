package wherefrom.job.money;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.BagBook;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.entry.SetHolds;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;
import wherefrom.text.Words;

/** The gasket set: what it holds, as ticked, and whether it was ordered or is here. */
public final class GasketSet {
  static final Article WHAT = new Article.Known(Goods.GASKET_SET);

  private static final Set<Goods> SINGLE =
      EnumSet.of(Goods.HEAD_GASKETS, Goods.SEALS, Goods.STEM_SEALS);

  private static final EntryFold<GasketSet> READS =
      EntryFold.<GasketSet>none()
          .on(SetHolds.class, (set, it) -> set.holds.put(it.what(), it.pieces()))
          .on(GoodsArrived.class, GasketSet::take);

  private final Map<Article, Integer> holds = new LinkedHashMap<>();
  private final EngineJob job;
  private boolean here;

  private GasketSet(EngineJob job) {
    this.job = job;
  }

  public static GasketSet of(EngineJob job) {
    return job.remember(GasketSet.class, GasketSet::read);
  }

  private static GasketSet read(EngineJob job) {
    return READS.all(new GasketSet(job), job.standing());
  }

  private void take(GoodsArrived came) {
    here |= came.right() && came.what().equals(WHAT);
  }

  /** Whether a person ticked anything that it holds. */
  boolean isTicked() {
    return holds.values().stream().anyMatch(pieces -> pieces > 0);
  }

  /** Whether it is here, or a cost line says that it is committed or paid. */
  boolean isHad() {
    return here || new MoneyEntries(job).isOrdered(WHAT);
  }

  /** How many of a single gasket it holds, as a person ticked. */
  public int holds(Article what) {
    return holds.getOrDefault(what, 0);
  }

  /** How many of a single gasket need not be bought. */
  int covers(Article what) {
    return isTicked() && isHad() ? holds(what) : 0;
  }

  /** What may be in it: head gaskets, seals and what is always new where anything was opened. */
  public List<AlwaysNew> candidates() {
    List<AlwaysNew> all = new ArrayList<>(AlwaysNew.of(BagBook.of(job)));
    for (Purchase asked : CostList.standing(job).purchases()) {
      boolean gasket = asked.what().findGoods().filter(SINGLE::contains).isPresent();
      if (gasket && all.stream().noneMatch(one -> one.article().equals(asked.what()))) {
        List<String> why = List.of(asked.reason());
        all.add(new AlwaysNew(asked.what().words(), asked.what(), asked.pieces(), why));
      }
    }
    return List.copyOf(all);
  }

  /** Ticks what the set holds; 0 pieces where it lacks it. */
  public static String tick(OpenJob job, Article what, int pieces) {
    return job.asOne(() -> tickOnce(job, what, pieces));
  }

  private static String tickOnce(OpenJob job, Article what, int pieces) {
    job.record(new SetHolds(what, pieces));
    return pieces == 0
        ? "Not in the set: " + what.words() + "."
        : "In the set: " + Words.sentence(pieces + " × " + what.words());
  }
}
