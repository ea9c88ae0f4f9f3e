package wherefrom.job.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Plausibility;
import wherefrom.inspection.measure.Question;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.Sample;
import wherefrom.inspection.measure.Station;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.FigureParser;
import wherefrom.job.MeasureBook;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.TakenReading;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;

/** Guided readings: typed, questioned where they look like a slip, kept, worked out, judged. */
public final class Measuring {

  /** What became of a set of readings. */
  public sealed interface Answer {

    /** What the function for its kind makes of it. */
    default <R> R match(
        Function<Kept, R> kept, Function<Questioned, R> questioned, Function<Refused, R> refused) {
      if (this instanceof Kept one) {
        return kept.apply(one);
      }
      if (this instanceof Questioned one) {
        return questioned.apply(one);
      }
      return refused.apply((Refused) this);
    }

    /** Kept; the result with its judgements. */
    record Kept(MeasuredResult result) implements Answer {}

    /** Not kept: these readings may be slips. Take them again confirmed to keep them. */
    record Questioned(List<Question> questions) implements Answer {
      public Questioned {
        questions = List.copyOf(questions);
      }
    }

    /** Not kept; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  /**
   * A set of readings as typed.
   *
   * @param readings by station; a station read several times has several
   * @param confirmed true when the person has seen the questions and stands by the readings
   */
  public record Entry(
      Subject subject,
      String plan,
      String tool,
      Map<String, List<String>> readings,
      boolean confirmed,
      String note) {
    public Entry {
      Map<String, List<String>> copy = new LinkedHashMap<>();
      readings.forEach((station, texts) -> copy.put(station, List.copyOf(texts)));
      readings = copy;
    }
  }

  private final OpenJob job;

  public Measuring(OpenJob job) {
    this.job = job;
  }

  /** The plans for a subject. */
  public List<ReadingPlan> listPlans(Subject subject) {
    return ReadingPlans.all().stream()
        .filter(plan -> ReadingPlans.suits(plan, subject, kind(subject)))
        .filter(plan -> ReadingPlans.existsIn(job.state().layout(), plan))
        .toList();
  }

  private Optional<PartKind> kind(Subject subject) {
    return subject instanceof Subject.APart part
        ? job.state().findPart(part.item()).map(record -> record.part().kind())
        : Optional.empty();
  }

  /** Keeps readings, or says what stands against it. */
  public Answer take(Entry entry) {
    return job.asOne(() -> takeOnce(entry));
  }

  private Answer takeOnce(Entry entry) {
    Optional<ReadingPlan> plan = ReadingPlans.find(entry.plan());
    Optional<Tool> tool = job.state().measures().findTool(entry.tool());
    if (plan.isEmpty() || !ReadingPlans.suits(plan.get(), entry.subject(), kind(entry.subject()))) {
      return new Answer.Refused("There is no plan \"" + entry.plan() + "\" for this.");
    }
    if (tool.isEmpty()) {
      return new Answer.Refused(
          "The tool \"" + entry.tool() + "\" is not on your list: list it first.");
    }
    List<TakenReading> taken = new ArrayList<>();
    Optional<String> fault = read(plan.get(), entry.readings(), taken);
    if (fault.isPresent()) {
      return new Answer.Refused(fault.get());
    }
    List<Question> questions = questions(plan.get(), entry.subject(), tool.get(), taken);
    if (!questions.isEmpty() && !entry.confirmed()) {
      return new Answer.Questioned(questions);
    }
    boolean confirmed = !questions.isEmpty();
    job.record(
        new ReadingsTaken(
            entry.subject().key(),
            entry.plan(),
            entry.tool(),
            taken,
            confirmed,
            entry.note().strip()));
    return new Answer.Kept(
        job.state().measures().findResult(entry.subject(), entry.plan()).orElseThrow());
  }

  /** What is wrong, in a sentence; the readings go into {@code taken}. */
  private Optional<String> read(
      ReadingPlan plan, Map<String, List<String>> readings, List<TakenReading> taken) {
    for (Map.Entry<String, List<String>> one : readings.entrySet()) {
      Optional<Station> station = plan.findStation(one.getKey());
      if (station.isEmpty()) {
        return Optional.of("\"" + one.getKey() + "\" is not a station of " + plan.title() + ".");
      }
      for (String text : one.getValue()) {
        Optional<String> fault =
            FigureParser.read(
                text,
                station.get().usual(job.state().units()),
                amount -> {
                  taken.add(new TakenReading(station.get().key(), amount));
                  return Optional.<String>empty();
                },
                Optional::of);
        if (fault.isPresent()) {
          return fault;
        }
      }
    }
    return taken.isEmpty() ? Optional.of("Type at least one reading.") : Optional.empty();
  }

  private List<Question> questions(
      ReadingPlan plan, Subject subject, Tool tool, List<TakenReading> taken) {
    List<Question> questions = new ArrayList<>();
    List<Sample> samples = MeasureBook.samples(plan, taken);
    for (Sample sample : samples) {
      double[] others = others(plan, subject, sample.station());
      questions.addAll(Plausibility.ask(plan, sample, tool, others));
    }
    if (questions.isEmpty()) {
      questions.addAll(Plausibility.askSisters(plan, samples));
      Plausibility.askHeld(plan, samples, tool).ifPresent(questions::add);
    }
    return questions;
  }

  /** What the same station reads on the others of the kind, in mm or newtons. */
  private double[] others(ReadingPlan plan, Subject subject, Station station) {
    return job.state().measures().listResults(plan.key()).stream()
        .filter(result -> !result.subject().equals(subject))
        .flatMap(result -> result.samples().stream())
        .filter(sample -> sample.station().equals(station))
        .mapToDouble(sample -> Amount.of(sample.mean(), sample.unit()).inBase().doubleValue())
        .toArray();
  }
}
