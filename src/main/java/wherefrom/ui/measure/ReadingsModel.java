package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Question;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.Sample;
import wherefrom.inspection.measure.Station;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.FigureParser;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.StaleReadings;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Amount;
import wherefrom.ui.subject.Named;

/**
 * The readings of one plan on one subject, one at a time. Each is kept in the logbook at once, so
 * that nothing is lost on leaving half-way and each can be taken back.
 */
final class ReadingsModel {
  private final OpenJob job;
  private final Measuring measuring;
  private final Subject subject;
  private final ReadingPlan plan;
  private final PlanTool planTool;
  private Optional<Station> chosen = Optional.empty();
  private List<Question> questions = List.of();
  private String questioned = "";
  private Optional<Station> questionedAt = Optional.empty();
  private boolean anew;
  private boolean replacing;

  /**
   * @param plan the key of a plan that suits the subject
   */
  ReadingsModel(OpenJob job, Subject subject, String plan) {
    this.job = job;
    this.measuring = new Measuring(job);
    this.subject = subject;
    this.plan = ReadingPlans.find(plan).orElseThrow();
    this.planTool = new PlanTool(job, this.plan);
    // What was read before the surface was cut is no more so: reading begins again.
    this.anew = result().filter(new StaleReadings(job.state())::isStale).isPresent();
  }

  String title() {
    return ReadingTitle.of(name(), plan.title().toLowerCase(Locale.ROOT));
  }

  /** Whose it is and where to read it, for the largest letters. */
  String titleAt(Station station) {
    return ReadingTitle.atSpot(job.state(), subject, plan, station);
  }

  /** The subject alone. */
  String name() {
    return Named.title(job.state(), subject);
  }

  ReadingPlan plan() {
    return plan;
  }

  Subject subject() {
    return subject;
  }

  /** What was read so far; a fresh start hides what was read before. */
  Optional<MeasuredResult> result() {
    return anew ? Optional.empty() : job.state().measures().findResult(subject, plan.key());
  }

  /** Goes on where another one of the same readings stood. */
  void goOn(ReadingsModel other) {
    planTool.goOn(other.planTool);
    chosen = other.chosen;
    questions = other.questions;
    questioned = other.questioned;
    questionedAt = other.questionedAt;
    anew = other.anew;
    replacing = other.replacing;
  }

  private Map<String, List<String>> readings() {
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (Sample sample : result().map(MeasuredResult::samples).orElse(List.of())) {
      readings.put(sample.station().key(), sample.readings().stream().map(Amount::text).toList());
    }
    return readings;
  }

  /** What was read at a station, in words; empty where nothing was. */
  String read(Station station) {
    return String.join("; ", readings().getOrDefault(station.key(), List.of()));
  }

  /** The station to be read now: the one asked for, else the first without a reading. */
  Optional<Station> station() {
    Map<String, List<String>> readings = readings();
    return chosen.or(
        () ->
            plan.stations().stream()
                .filter(station -> !readings.containsKey(station.key()))
                .findFirst());
  }

  /** The station that was read last, to be read once more. */
  void again(Station station) {
    chosen = Optional.of(station);
  }

  /**
   * A station to be read anew, as after the piece was worked on: what it read before is dropped.
   */
  void anew(Station station) {
    chosen = Optional.of(station);
    replacing = true;
  }

  Optional<Station> lastRead() {
    Map<String, List<String>> readings = readings();
    List<Station> read =
        plan.stations().stream().filter(station -> readings.containsKey(station.key())).toList();
    return read.isEmpty() ? Optional.empty() : Optional.of(read.get(read.size() - 1));
  }

  /** {@code Reading 2 of 4}. */
  String count() {
    return station()
        .map(
            station ->
                "Reading "
                    + (plan.stations().indexOf(station) + 1)
                    + " of "
                    + plan.stations().size())
        .orElse("All " + plan.stations().size() + " read");
  }

  /** Begins from the first station; what was read before stays in the logbook. */
  void startAnew() {
    anew = true;
    chosen = Optional.empty();
    drop();
  }

  List<Tool> tools() {
    return planTool.tools();
  }

  void choose(Tool chosenTool) {
    planTool.choose(chosenTool);
  }

  /** The tool that reads here; empty until one is chosen or known. */
  Optional<Tool> tool() {
    return planTool.find(result());
  }

  /** What the tool showed at zero last; empty when nobody looked. */
  Optional<String> zero() {
    return tool().flatMap(each -> job.state().measures().findZero(each.name()));
  }

  List<Question> questions() {
    return questions;
  }

  /** Takes a figure with its unit; gives a sentence where it cannot be taken. */
  String enter(String typed) {
    return keep(typed, false);
  }

  /** The person stands by the reading that was questioned. */
  String confirm() {
    return keepQuestioned(questioned, true);
  }

  /** The questioned figure in the other unit, where that may have been meant. */
  Optional<String> meant() {
    return questions.stream()
        .flatMap(question -> question.meant().stream())
        .map(Amount::text)
        .findFirst();
  }

  /** {@code 66.29 in or 66.29 mm?}, the question in few words; empty where nobody can say. */
  Optional<String> eitherOr() {
    return questions.stream()
        .filter(question -> question.reading().isPresent())
        .flatMap(
            question ->
                question.meant().stream()
                    .map(meant -> question.reading().get().text() + " or " + meant.text() + "?"))
        .findFirst();
  }

  /** Takes what may have been meant instead. */
  String takeMeant() {
    return keepQuestioned(meant().orElse(""), false);
  }

  /** At the station that it was asked about, whatever was taken back since. */
  private String keepQuestioned(String figure, boolean confirmed) {
    chosen = questionedAt.or(() -> chosen);
    drop();
    return keep(figure, confirmed);
  }

  /** What UNDO would take back here, in few words; empty where no question stands. */
  Optional<String> undoes() {
    return questions.isEmpty() ? Optional.empty() : Optional.of("the question");
  }

  /** The questioned reading was a slip. */
  void drop() {
    questions = List.of();
    questioned = "";
    questionedAt = Optional.empty();
  }

  private String keep(String typed, boolean confirmed) {
    Optional<Station> station = station();
    Optional<Tool> with = tool();
    if (station.isEmpty() || with.isEmpty()) {
      return with.isEmpty()
          ? "Choose the tool you measure with first."
          : typed + " was not taken: all are read. Press \"Read one again\".";
    }
    return measuring
        .take(entry(station.get(), with.get(), typed, confirmed))
        .match(
            kept -> taken(),
            asked -> question(typed, station.get(), asked.questions()),
            Measuring.Answer.Refused::sentence);
  }

  private String taken() {
    anew = false;
    chosen = Optional.empty();
    replacing = false;
    return "";
  }

  /** Readings of other stations were confirmed when they were taken: they are not asked again. */
  private String question(String typed, Station station, List<Question> asked) {
    Optional<Amount> figure = FigureParser.find(typed, station.usual(job.state().units()));
    List<Question> own =
        asked.stream()
            .filter(question -> question.station().equals(station.key()))
            .filter(question -> question.reading().isEmpty() || isSame(question, figure))
            .toList();
    if (own.isEmpty()) {
      return keep(typed, true);
    }
    questions = own;
    questioned = typed;
    questionedAt = Optional.of(station);
    return "";
  }

  private static boolean isSame(Question question, Optional<Amount> figure) {
    return figure
        .flatMap(typed -> question.reading().map(read -> read.inBase().compareTo(typed.inBase())))
        .filter(difference -> difference == 0)
        .isPresent();
  }

  private Measuring.Entry entry(Station station, Tool with, String typed, boolean confirmed) {
    Map<String, List<String>> readings = readings();
    List<String> before = replacing ? List.of() : readings.getOrDefault(station.key(), List.of());
    List<String> here = new ArrayList<>(before);
    here.add(typed);
    readings.put(station.key(), here);
    return new Measuring.Entry(subject, plan.key(), with.name(), readings, confirmed, "");
  }
}
