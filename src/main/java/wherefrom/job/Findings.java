package wherefrom.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    return worst.computeIfAbsent(item, it -> after(it, 0));
  }

  /** The worst that was found after the latest decision. */
  Evidence sinceDecision(int item) {
    return sinceDecision.computeIfAbsent(
        item, it -> after(it, job.getPart(it).dates().decidedAt()));
  }

  private Evidence after(int item, long sequence) {
    if (results.isEmpty() && job.getPart(item).looks().isEmpty()) {
      return Evidence.NONE;
    }
    return Stream.concat(looks(item), measured(item))
        .filter(evidence -> evidence.since() > sequence)
        .reduce(Evidence.NONE, Evidence::or);
  }

  private Stream<Evidence> looks(int item) {
    PartRecord record = job.getPart(item);
    return record.looks().entrySet().stream()
        .map(
            one ->
                new Evidence(
                    one.getValue(), record.dates().lookedAt().getOrDefault(one.getKey(), 0L)));
  }

  /** The judgements of a part's readings and, of the clearances that it is part of. */
  private Stream<Evidence> measured(int item) {
    if (results.isEmpty()) {
      return Stream.empty();
    }
    Part part = job.getPart(item).part();
    Stream<Evidence> own =
        results.getOrDefault(Subject.ofPart(item).key(), List.of()).stream()
            .map(result -> new Evidence(result.worst(), result.sequence()));
    Stream<Evidence> clearance =
        new OilClearances(job)
            .findFor(part).stream().map(found -> new Evidence(found.look(), found.sequence()));
    Stream<Evidence> pairs =
        new PairClearances(job)
            .find(Subject.ofPart(item)).stream()
                .map(found -> new Evidence(found.look(), found.sequence()));
    return Stream.concat(own, Stream.concat(clearance, pairs));
  }
}
