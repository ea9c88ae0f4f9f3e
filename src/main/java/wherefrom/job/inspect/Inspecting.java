package wherefrom.job.inspect;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.LookBook;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.StandingRule;
import wherefrom.job.change.Bought;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.LookEntry;
import wherefrom.job.entry.LookRecorded;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;

/** Quick tests at the bench: the cards of a part or a feature, their answers, what is left. */
public final class Inspecting {

  /** What became of an answer. */
  public sealed interface Answer {
    /** Kept; the rules that speak of it now. */
    record Kept(CheckCard card, List<StandingRule> follows) implements Answer {
      public Kept {
        follows = List.copyOf(follows);
      }
    }

    /** Not kept; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  /** Something with tests that nobody has answered. */
  public record Unlooked(Subject subject, String words, List<Check> checks) {
    public Unlooked {
      checks = List.copyOf(checks);
    }
  }

  /** The note of a look that was taken in taking apart. */
  public static final String AS_IT_CAME_OUT = "as it came out";

  private final OpenJob job;

  public Inspecting(OpenJob job) {
    this.job = job;
  }

  /** The cards of a subject, in the order of doing them; empty for a part the job has not. */
  public List<CheckCard> cards(Subject subject) {
    Map<String, CheckCard> latest = latest(subject);
    return checks(subject).stream()
        .map(check -> latest.getOrDefault(check.key(), new CheckCard(check, Look.NOT_LOOKED, "")))
        .toList();
  }

  /** Answers a quick test. NOT_LOOKED takes an earlier answer away. */
  public Answer answer(Subject subject, String check, Look look, String note) {
    return job.asOne(() -> answerOnce(subject, check, look, note));
  }

  private Answer answerOnce(Subject subject, String check, Look look, String note) {
    Optional<Check> known =
        checks(subject).stream().filter(one -> one.key().equals(check)).findFirst();
    if (known.isEmpty()) {
      return new Answer.Refused("There is no test \"" + check + "\" for this.");
    }
    if (subject instanceof Subject.AFeature at
        && !at.feature().where(job.state().layout()).contains(at.where())) {
      return new Answer.Refused("This engine has no " + at.words() + ".");
    }
    long before = job.state().standing().size();
    job.record(entry(subject, check, look, note.strip()));
    long sequence = job.state().standing().get((int) before).sequence();
    List<StandingRule> follows =
        job.state().rules().all().stream().filter(rule -> rule.sequence() == sequence).toList();
    return new Answer.Kept(new CheckCard(known.get(), look, note.strip()), follows);
  }

  private static JobEntry entry(Subject subject, String check, Look look, String note) {
    return subject.match(
        part -> new LookRecorded(part.item(), check, look, note),
        feature -> new FeatureLooked(feature.key(), check, look, note),
        beside -> new FeatureLooked(beside.key(), check, look, note));
  }

  /** What nobody has looked at yet: parts that are out, then features. */
  public List<Unlooked> listUnlooked() {
    return job.state().remember(Left.class, state -> new Left(List.copyOf(unlooked()))).all();
  }

  private record Left(List<Unlooked> all) {}

  private List<Unlooked> unlooked() {
    List<Unlooked> left = new ArrayList<>();
    for (PartRecord part : job.state().parts()) {
      if (part.where() == Whereabouts.OUT && !part.part().fresh()) {
        add(left, Subject.ofPart(part.part().item()), part.part().words());
      }
    }
    for (Subject.AFeature feature : features(job.state().layout())) {
      if (!feature.feature().isDueOnTheBench()) {
        continue; // It cannot be done on parts that lie on the bench.
      }
      add(left, feature, feature.words());
    }
    return left;
  }

  /** What should be looked at before it is washed: deposits tell the story (FAA-H-8083-32). */
  public List<Unlooked> listBeforeWashing() {
    return listUnlooked().stream()
        .map(
            one ->
                new Unlooked(
                    one.subject(),
                    one.words(),
                    one.checks().stream().filter(Check::dirty).toList()))
        .filter(one -> !one.checks().isEmpty())
        .toList();
  }

  /** Every feature of a layout. */
  public static List<Subject.AFeature> features(Layout layout) {
    List<Subject.AFeature> features = new ArrayList<>();
    for (Feature feature : Feature.values()) {
      for (String where : feature.where(layout)) {
        features.add(new Subject.AFeature(feature, where));
      }
    }
    return features;
  }

  private void add(List<Unlooked> left, Subject subject, String words) {
    List<Check> open =
        cards(subject).stream()
            .filter(card -> card.look() == Look.NOT_LOOKED)
            .map(CheckCard::check)
            .toList();
    if (!open.isEmpty()) {
      left.add(new Unlooked(subject, words, open));
    }
  }

  private List<Check> checks(Subject subject) {
    return subject.match(
        part -> checks(part.item()), at -> Checks.of(at.feature()), beside -> List.of());
  }

  private List<Check> checks(int item) {
    return job.state()
        .findPart(item)
        .map(PartRecord::part)
        .map(part -> checksOf(job.state(), part))
        .orElse(List.of());
  }

  /** The tests of a part, in the order of doing them: of a lifter those of its type. */
  public static List<Check> checksOf(EngineJob job, Part part) {
    return part.kind() == PartKind.LIFTER
        ? Checks.ofLifter(Bought.of(job).lifterType(part))
        : Checks.of(part.kind());
  }

  private Map<String, CheckCard> latest(Subject subject) {
    Map<String, CheckCard> latest = new HashMap<>();
    for (LookEntry look : LookBook.of(job.state()).of(subject)) {
      put(latest, look.check(), look.look(), look.note());
    }
    return latest;
  }

  private static void put(Map<String, CheckCard> latest, String key, Look look, String note) {
    Checks.find(key).ifPresent(check -> latest.put(key, new CheckCard(check, look, note)));
  }
}
