package wherefrom.job;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.parts.Part;
import wherefrom.rules.Evidence;

/** What looks and readings say of each part, and since when: worked out once for a state. */
final class Findings {
  private final EngineJob job;
  private final Map<String, List<MeasuredResult>> results;
  private final Map<Integer, Evidence> worst = new HashMap<>();
  private final Map<Integer, Evidence> sinceDecision = new HashMap<>();

  Findings(EngineJob job) {
    this.job = job;
    this.results =
        job.measures().all().stream()
            .collect(Collectors.groupingBy(result -> result.subject().key()));
  }

  /** The worst of all that was found on a part. */
  Evidence worst(int item) {
    return worst.computeIfAbsent(item, it -> worstAfter(it, 0));
  }

  /** The worst that was found after the latest decision. */
  Evidence sinceDecision(int item) {
    return sinceDecision.computeIfAbsent(
        item, it -> worstAfter(it, job.getPart(it).dates().decidedAt()));
  }

  /**
   * A look at a part, or a judgement of its readings.
   *
   * @param word its answer; of a reading that its uncertainty leaves open {@code undecided}
   * @param words with its answer: {@code Is it straight? fail}, {@code Runout: fail}
   */
  record Finding(Look look, String word, long since, String words) {
    boolean isDoubtful() {
      return evidence().isDoubtful();
    }

    private Evidence evidence() {
      return new Evidence(look, since);
    }
  }

  /**
   * What makes a part doubtful: the worst that was found, of several the latest. Of one that is to
   * be reused that which was found after the decision.
   */
  Optional<Finding> findDoubt(int item) {
    PartRecord part = job.getPart(item);
    boolean reused = part.decision().equals(Optional.of(Decision.REUSE));
    return after(item, reused ? part.dates().decidedAt() : 0)
        .filter(Finding::isDoubtful)
        .max(Comparator.comparing(Finding::look).thenComparing(Finding::since));
  }

  private Evidence worstAfter(int item, long sequence) {
    return after(item, sequence).map(Finding::evidence).reduce(Evidence.NONE, Evidence::or);
  }

  private Stream<Finding> after(int item, long sequence) {
    return Stream.concat(looks(item), measured(item)).filter(found -> found.since() > sequence);
  }

  private Stream<Finding> looks(int item) {
    PartRecord record = job.getPart(item);
    return record.looks().entrySet().stream()
        .map(
            one ->
                new Finding(
                    one.getValue(),
                    one.getValue().word(),
                    record.dates().lookedAt().getOrDefault(one.getKey(), 0L),
                    BenchWords.look(one.getKey(), one.getValue())));
  }

  /** The judgements of a part's readings and, of the clearances that it is part of. */
  private Stream<Finding> measured(int item) {
    if (results.isEmpty()) {
      return Stream.empty();
    }
    Part part = job.getPart(item).part();
    Stream<Finding> own =
        results.getOrDefault(Subject.ofPart(item).key(), List.of()).stream()
            .map(result -> finding(result.plan().title(), result.worst(), result.sequence()));
    Stream<Finding> clearance =
        new OilClearances(job)
            .findFor(part).stream()
                .map(found -> finding("Oil clearance", found.look(), found.sequence()));
    Stream<Finding> pairs =
        new PairClearances(job)
            .find(Subject.ofPart(item)).stream()
                .map(
                    found ->
                        finding(
                            found.pair().title() + " clearance", found.look(), found.sequence()));
    return Stream.concat(own, Stream.concat(clearance, pairs));
  }

  private static Finding finding(String title, Look look, long since) {
    String word = look == Look.SUSPECT ? "undecided" : look.word();
    return new Finding(look, word, since, title + ": " + word);
  }
}
