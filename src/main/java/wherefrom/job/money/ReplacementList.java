package wherefrom.job.money;

import static wherefrom.rules.consequence.ChangeKind.FLAT_TO_ROLLER;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.FittingSize;
import wherefrom.job.LastDecision;
import wherefrom.job.PartRecord;
import wherefrom.job.StandingRule;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Ban;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.size.CutSurface;
import wherefrom.rules.size.GoodsSize;

/** What must be bought, with sizes from the readings. */
public final class ReplacementList {
  private final EngineJob job;

  public ReplacementList(EngineJob job) {
    this.job = job;
  }

  /** One line for each kind and size; parts that are replaced already are left out. */
  public List<Replacement> lines() {
    return job.remember(Lines.class, state -> new Lines(workOut())).all();
  }

  private record Lines(List<Replacement> all) {}

  private List<Replacement> workOut() {
    Map<PartKind, List<Part>> wanted = new EnumMap<>(PartKind.class);
    Map<PartKind, String> reasons = new EnumMap<>(PartKind.class);
    for (PartRecord record : job.parts()) {
      Part part = record.part();
      Optional<Ban> ban = job.rules().findBan(record);
      boolean replace =
          record.decision().equals(Optional.of(Decision.REPLACE))
              || ban.filter(one -> asksForAnother(one, part)).isPresent();
      if (replace && record.where() != Whereabouts.RETIRED) {
        wanted.computeIfAbsent(part.kind(), kind -> new ArrayList<>()).add(part);
        reasons.putIfAbsent(
            part.kind(),
            ban.map(one -> Consequence.ruleWords(one.rule()) + ": " + one.reason())
                .orElseGet(() -> decided(part)));
      }
    }
    return wanted.entrySet().stream()
        .flatMap(one -> lines(one.getValue(), reasons.getOrDefault(one.getKey(), "")).stream())
        .toList();
  }

  /** What waits for work on it is not bought, save the cap that the work is done with. */
  private static boolean asksForAnother(Ban ban, Part part) {
    return ban.check().isEmpty() || (isCap(part.kind()) && !part.fresh());
  }

  private static boolean isCap(PartKind kind) {
    return kind == PartKind.ROD_CAP || kind == PartKind.MAIN_CAP;
  }

  /** What must be alike for parts of one kind to be bought as one. */
  private record Alike(GoodsSize size, String unknown) {
    static Alike of(Place home, Optional<FittingSize> fits) {
      GoodsSize side = GoodsSize.of(Replacement.findSide(home));
      GoodsSize size =
          fits.filter(FittingSize::isKnown)
              .flatMap(FittingSize::step)
              .flatMap(step -> CutSurface.find(home.kind()).map(surface -> surface.size(step)))
              .orElse(side);
      return new Alike(size, size.isStep() ? "" : fits.map(FittingSize::words).orElse(""));
    }
  }

  /** Parts of one kind: a line for each size that fits. */
  private List<Replacement> lines(List<Part> parts, String reason) {
    SurfaceSizes sizes = new SurfaceSizes(job);
    Map<Alike, OneSize> bySize = new LinkedHashMap<>();
    for (Part part : parts) {
      Optional<FittingSize> fits = sizes.findToBuy(part.home());
      bySize.computeIfAbsent(Alike.of(part.home(), fits), size -> new OneSize()).add(part, fits);
    }
    return bySize.entrySet().stream()
        .map(one -> line(one.getValue(), one.getKey().size(), reason))
        .toList();
  }

  /** The parts that want one size, and what is said of it. */
  private record OneSize(List<Part> parts, Set<String> said) {
    OneSize() {
      this(new ArrayList<>(), new LinkedHashSet<>());
    }

    void add(Part part, Optional<FittingSize> fits) {
      parts.add(part);
      fits.ifPresent(size -> said.add(size.words()));
    }
  }

  /** {@code decided: dished}. */
  private String decided(Part part) {
    String reason = LastDecision.find(job, part.item()).map(DecisionEntry::reason).orElse("");
    return reason.isEmpty() ? "decided" : "decided: " + reason;
  }

  private Replacement line(OneSize one, GoodsSize size, String reason) {
    List<Part> parts = one.parts();
    PartKind kind = parts.get(0).kind();
    return new Replacement(
        kind,
        Replacement.findSide(parts.get(0).home()),
        parts.stream().map(Part::home).toList(),
        parts.stream().mapToInt(Part::pieces).sum(),
        size,
        words(size, one.said()).orElseGet(() -> likeTheOld(kind, parts)),
        reason);
  }

  /** What one size follows from; the size alone where it follows from several things. */
  private static Optional<String> words(GoodsSize size, Set<String> said) {
    return said.size() > 1 ? Optional.of(size.words()) : said.stream().findFirst();
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
    if (kind == PartKind.ROD_CAP) {
      return "not sold alone. Buy a rod with its cap. Or have this rod machined with"
          + " another cap. Then measure its big end";
    }
    if (kind == PartKind.MAIN_CAP) {
      return "not sold alone. Have the mains line-honed with another cap. Then measure"
          + " every main";
    }
    boolean allSound = parts.stream().noneMatch(this::isFailed);
    return allSound
        ? "as the old one; where that is damaged, measure a good neighbor"
        : "as the old one was; measure a good neighbor";
  }

  private boolean isFailed(Part part) {
    boolean byLook = job.getPart(part.item()).looks().containsValue(Look.FAIL);
    return byLook
        || job.measures().listResults(Subject.ofPart(part.item())).stream()
            .anyMatch(result -> result.worst() == Look.FAIL);
  }
}
