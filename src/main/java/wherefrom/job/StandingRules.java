package wherefrom.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wherefrom.inspection.Sources;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Ban;
import wherefrom.rules.OpenCheck;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.Renewal;
import wherefrom.rules.consequence.Setting;
import wherefrom.text.Words;

/** All that the consequence rules say about the job as it stands. */
public final class StandingRules {
  /** A rule that forbids parts now. */
  private record Banning(StandingRule rule, Ban ban) {}

  /** A rule that parts wait for now. */
  private record Holding(StandingRule rule, OpenCheck check) {}

  /** What is asked: of other places the same is another thing, such as of one valve side alone. */
  private record Asked(String key, Effect effect, Set<Place> places) {
    static Asked by(Consequence one) {
      return new Asked(one.key(), one.effect(), one.places());
    }
  }

  private final List<StandingRule> all;
  private final List<Banning> banning;
  private final List<Holding> holding;
  private final SurfaceSizes sizes;

  private StandingRules(List<StandingRule> all, SurfaceSizes sizes) {
    this.all = List.copyOf(all);
    this.banning =
        all.stream().filter(StandingRule::bans).map(it -> new Banning(it, ban(it))).toList();
    this.holding =
        all.stream().filter(StandingRule::holds).map(it -> new Holding(it, check(it))).toList();
    this.sizes = sizes;
  }

  static StandingRules of(EngineJob job) {
    Setting setting = job.workedOut().meanings().setting();
    Map<Asked, StandingRule> found = new LinkedHashMap<>();
    for (MadeChange made : MadeChanges.of(job)) {
      for (Consequence consequence : job.workedOut().meanings().of(made.change(), setting)) {
        StandingRule rule =
            new StandingRule(
                consequence,
                made.sequence(),
                made.binding(),
                individual(job, made, consequence),
                findAnswer(job, consequence.key(), made.sequence()),
                SettledChecks.find(job, consequence));
        // A later change asks for the same check anew; one that binds outweighs one that doesn't.
        found.merge(Asked.by(consequence), rule, StandingRules::stronger);
      }
      setting = setting.after(made.change());
    }
    return new StandingRules(new ArrayList<>(found.values()), new SurfaceSizes(job));
  }

  private static Optional<LoggedEntry> findAnswer(EngineJob job, String key, long after) {
    return job.told().findAnswer(key).filter(logged -> logged.sequence() > after);
  }

  /** What was found on one part and concerns nothing but its own place speaks of it alone. */
  private static int individual(EngineJob job, MadeChange made, Consequence consequence) {
    boolean alone =
        made.about() > 0
            && consequence.places().equals(Set.of(job.getPart(made.about()).part().home()));
    return alone ? made.about() : 0;
  }

  private static StandingRule stronger(StandingRule before, StandingRule now) {
    if (before.binding() != now.binding()) {
      return before.binding() ? before : now;
    }
    return before.sequence() > now.sequence() ? before : now;
  }

  /** Every consequence that stands, in the order of the changes. */
  public List<StandingRule> all() {
    return all;
  }

  /** A check as it is answered: once, wherever it is asked. */
  private record Asking(String key, Effect effect, int individual) {
    static Asking of(StandingRule rule) {
      Consequence one = rule.consequence();
      return new Asking(one.key(), one.effect(), rule.individual());
    }
  }

  /** The checks that nobody has passed yet; what one answer settles is listed once. */
  public List<StandingRule> openChecks() {
    return once(StandingRule::isOpenCheck);
  }

  /** The open check with this name; empty where none is open. */
  public Optional<StandingRule> findOpenCheck(String key) {
    return all.stream()
        .filter(rule -> rule.isOpenCheck() && rule.consequence().key().equals(key))
        .findFirst();
  }

  /** All checks, passed or not; what one answer settles is listed once. */
  public List<StandingRule> checks() {
    return once(rule -> rule.consequence().effect().isCheck());
  }

  private List<StandingRule> once(Predicate<StandingRule> which) {
    Map<Asking, StandingRule> found = new LinkedHashMap<>();
    all.stream()
        .filter(which)
        .forEach(rule -> found.merge(Asking.of(rule), rule, StandingRule::together));
    return List.copyOf(found.values());
  }

  /** What concerns a part: at its home place. */
  public List<StandingRule> listFor(Part part) {
    return all.stream().filter(rule -> rule.concerns(part, part.home())).toList();
  }

  /** The rules that forbid a part at a place, and a new part's size where it does not fit. */
  List<Ban> listBans(PartRecord part, Place place) {
    List<Ban> bans = new ArrayList<>();
    for (Banning one : banning) {
      if (one.rule().concerns(part.part(), place) && hits(one.rule(), part, place)) {
        bans.add(one.ban());
      }
    }
    if (part.part().fresh()) {
      wrongSize(part, place).ifPresent(bans::add);
    }
    return bans;
  }

  private Optional<Ban> wrongSize(PartRecord part, Place place) {
    String rule = part.part().kind() == PartKind.PISTON ? "R18" : "R16";
    return sizes
        .findObjection(part.part().item(), place)
        .map(why -> new Ban(rule, why, Sources.PRACTICE, part.dates().takenOn(), ""));
  }

  /** The first that forbids a part at its home. */
  public Optional<Ban> findBan(PartRecord part) {
    return listBans(part, part.part().home()).stream().findFirst();
  }

  private static Ban ban(StandingRule rule) {
    Consequence one = rule.consequence();
    boolean work = one.effect() == Effect.FORBIDDEN && one.renewal() == Renewal.SIZE;
    String check = work ? one.key() : "";
    return new Ban(one.rule(), one.sentence(), one.source(), rule.since(), check);
  }

  /**
   * Whether a ban speaks of this very part. A new part was not there before it was taken on, and
   * what wears did not wear it before it was fitted; but of the wrong size or sort it may be.
   */
  private boolean hits(StandingRule rule, PartRecord part, Place place) {
    if (!part.part().fresh()) {
      return true;
    }
    boolean before = part.dates().takenOn() <= rule.sequence();
    return switch (rule.consequence().renewal()) {
      case WEAR -> part.dates().firstFitted() > 0 && part.dates().firstFitted() < rule.sequence();
      case SIZE -> before && !sizes.isOfSize(part.part().item(), place);
      case SORT -> before && !isOfSort(rule, part);
    };
  }

  /** Whether the sort that the rule wants was said of a new part. */
  private boolean isOfSort(StandingRule rule, PartRecord part) {
    return sizes
        .findSortOf(part.part().item())
        .map(sort -> sort.article(part.part().kind()))
        .filter(sort -> isWanted(rule.consequence(), sort))
        .isPresent();
  }

  private static boolean isWanted(Consequence consequence, Article sort) {
    return sort.findGoods().isPresent() && sort.findGoods().equals(consequence.findSort());
  }

  /** The checks that a part waits for at a place. */
  List<OpenCheck> listOpenChecks(Part part, Place place) {
    List<OpenCheck> open = new ArrayList<>();
    for (Holding one : holding) {
      if (one.rule().concerns(part, place)) {
        open.add(one.check());
      }
    }
    return open;
  }

  /**
   * How far the checks are that a part waits for at a place: {@code check 2 of 3}; empty where it
   * waits for none, or there is one alone.
   */
  public String checksOf(Part part, Place place) {
    long open = listOpenChecks(part, place).stream().map(OpenCheck::key).distinct().count();
    long passed =
        all.stream()
            .filter(one -> one.binding() && one.consequence().effect() == Effect.CHECK_FIRST)
            .filter(one -> one.isPassed() && one.concerns(part, place))
            .map(one -> one.consequence().key())
            .distinct()
            .count();
    return open == 0 || open + passed < 2 ? "" : "check " + (passed + 1) + " of " + (open + passed);
  }

  private static OpenCheck check(StandingRule rule) {
    return new OpenCheck(rule.consequence().key(), words(rule.consequence()), rule.since());
  }

  /** {@code a check is open (rule 11): check the pushrod length with a checking pushrod}. */
  private static String words(Consequence check) {
    return "a check is open ("
        + check.ruleWords()
        + "): "
        + Words.small(Words.withoutStop(check.sentence()));
  }
}
