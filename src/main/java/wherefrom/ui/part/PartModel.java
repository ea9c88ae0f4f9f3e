package wherefrom.ui.part;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import wherefrom.drawing.PlaceWords;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryItems;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.Remark;
import wherefrom.job.Unmated;
import wherefrom.job.decide.Deciding;
import wherefrom.job.decide.Proposal;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.handling.NewPart;
import wherefrom.job.inspect.FoundOnPart;
import wherefrom.job.photos.Photograph;
import wherefrom.job.puttogether.WhereTo;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.Standing;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Part;
import wherefrom.parts.Places;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;
import wherefrom.ui.app.Dates;
import wherefrom.ui.app.UndoWords;

/** What is known of one part, and what can be done with it. */
final class PartModel {

  /** A line about the part: a heading, and what is so. */
  record Line(String heading, String words) {}

  private final OpenJob job;
  private final Clock clock;
  private final int item;

  PartModel(OpenJob job, Clock clock, int item) {
    this.job = job;
    this.clock = clock;
    this.item = item;
  }

  private EngineJob state() {
    return job.state();
  }

  Part part() {
    return record().part();
  }

  private PartRecord record() {
    return state().getPart(item);
  }

  /** {@code 3 EX pushrod}. */
  String title() {
    return Words.capital(PlaceWords.named(state().layout(), part()));
  }

  /** Its photographs, oldest first. */
  List<Photograph> photos() {
    return Photograph.listOf(state(), Subject.ofPart(item));
  }

  /** Where it is and what its tag says. */
  List<Line> first() {
    List<Line> lines = new ArrayList<>();
    PartRecord record = record();
    String note = record.note().isEmpty() ? "" : " " + record.note() + ".";
    lines.add(new Line("Where", WhereTo.words(state(), part()) + note));
    lines.add(new Line("Tag", tag()));
    record.decision().ifPresent(made -> lines.add(new Line("Decided", made.word())));
    unmated().forEach(what -> lines.add(new Line("No longer mated", what.told())));
    return lines;
  }

  /** What parts it from its mates, at its own place. */
  private List<Unmated> unmated() {
    return Unmated.all(state()).stream()
        .filter(what -> record().where() != Whereabouts.RETIRED)
        .filter(what -> what.places().contains(part().home()))
        .toList();
  }

  /** What was found on it, then its notes, then its history. */
  List<Line> more() {
    List<Line> lines = new ArrayList<>();
    PartRecord record = record();
    lines.addAll(new PartFindings(job, item).lines());
    List<Remark> remarks = new ArrayList<>(record.remarks());
    Collections.reverse(remarks);
    for (Remark remark : remarks) {
      if (remark.photo().isEmpty()) {
        lines.add(new Line("Note, " + Dates.ago(remark.time(), clock), remark.text()));
      }
    }
    history().forEach(lines::add);
    return lines;
  }

  private String tag() {
    Part part = part();
    String issue = part.issue() == 1 ? "" : ", issue " + part.issue();
    String pieces = part.pieces() == 1 ? "" : ", " + part.pieces() + " pieces";
    String mark = Places.orientation(state().layout(), part.kind()).mark();
    return part.code(state().engine()).typed()
        + issue
        + pieces
        + (mark.isEmpty() ? "" : ", mark: " + mark)
        + (part.fresh() ? ", NEW" : "");
  }

  /** What happened to the part, the oldest first, in few words. */
  List<LifeEvent> life() {
    List<LifeEvent> events = new ArrayList<>();
    String name = PlaceWords.named(state().layout(), part().home());
    for (LoggedEntry logged : state().standing()) {
      if (EntryItems.of(logged.entry()).contains(item)) {
        String words = UndoWords.of(state(), Optional.of(logged));
        String rest = words.replace(" of " + name, "").replaceFirst("^" + name + "[,: ]*", "");
        new LifeEvent(Dates.day(logged.time(), clock), rest, 1).addTo(events);
      }
    }
    return events;
  }

  /** What is the matter with it, in few words. */
  String matter() {
    FoundOnPart found = FoundOnPart.of(job, item);
    return unmated().isEmpty() || found.speaksFirst()
        ? found.words()
        : "No longer mated: check it as a new mate.";
  }

  /** Where it is, in few words; where it belongs is said by the title. */
  String where() {
    String stop = state().stops().of(item).isEmpty() ? "" : "A stop waits for it. ";
    return stop + WhereTo.now(state(), part());
  }

  /** Whether the job is being put together and the part lies on the bench. */
  boolean goesBack() {
    return record().where() == Whereabouts.OUT && Standing.of(job).day() == JobDay.TOGETHER;
  }

  /** Whether its place card is its answer here: the job goes together. */
  boolean isJudgedHere() {
    return record().where() != Whereabouts.IN_ENGINE && Standing.of(job).day() == JobDay.TOGETHER;
  }

  /** What is to be done with it before it goes back. */
  WaysOn waysOn() {
    return new WaysOn(job, record(), goesBack());
  }

  /** Its code as on the tag. */
  String code() {
    return part().code(state().engine()).typed();
  }

  List<Judgement> judgements() {
    return new PartFindings(job, item).judgements();
  }

  /** What the rules propose; a part that is new or gone needs no decision. */
  Optional<Proposal> proposal() {
    boolean needless = part().fresh() || record().where() == Whereabouts.RETIRED;
    return needless || record().decision().isPresent()
        ? Optional.empty()
        : Optional.of(new Deciding(job).propose(item));
  }

  /** What happened to the part, the latest first. */
  private List<Line> history() {
    List<Line> lines = new ArrayList<>();
    for (LoggedEntry logged : state().standing()) {
      if (EntryItems.of(logged.entry()).contains(item)) {
        String words = EntryWords.of(state(), logged.entry());
        lines.add(0, new Line(Dates.ago(logged.time(), clock), words + "."));
      }
    }
    return lines;
  }

  /** What can be done with it now. */
  List<Deed> deeds() {
    List<Deed> deeds = new ArrayList<>(List.of(Deed.NOTE, Deed.PHOTO));
    Whereabouts where = record().where();
    if (where == Whereabouts.RETIRED) {
      return deeds;
    }
    if (where != Whereabouts.IN_ENGINE) {
      deeds.addAll(0, List.of(Deed.INSPECT, Deed.MEASURE));
    }
    if (!waysOn().openChecks().isEmpty()) {
      deeds.add(0, Deed.CHECK);
    }
    deeds.addAll(List.of(Deed.DECIDE, Deed.REPRINT, Deed.PIECES));
    switch (where) {
      case OUT -> deeds.addAll(List.of(Deed.WASH, Deed.LOST));
      case WASHING -> deeds.addAll(List.of(Deed.BACK, Deed.LOST));
      case AT_SHOP -> deeds.addAll(List.of(Deed.BACK_FROM_SHOP, Deed.LOST));
      case LOST -> deeds.add(Deed.FOUND);
      case FITTED -> deeds.add(Deed.TOOK_OUT);
      case IN_ENGINE -> deeds.add(0, Deed.OUT);
      case RETIRED -> {}
    }
    deeds.add(Deed.REPLACE);
    return deeds;
  }

  /** It has come out of its place; one that is out already stays as it is. */
  void out() {
    new TakeApart(job).out(record());
  }

  HandlingOutcome note(String text) {
    return new Handling(job).note(item, text);
  }

  HandlingOutcome pieces(String typed) {
    return new Handling(job).pieces(item, number(typed));
  }

  HandlingOutcome wash(String basket) {
    return new Handling(job).offForWashing(item, number(basket));
  }

  private static int number(String typed) {
    return typed.isEmpty() ? 0 : Integer.parseInt(typed);
  }

  HandlingOutcome back() {
    return new Handling(job).backFromWashing(item);
  }

  HandlingOutcome tookOut() {
    return new Handling(job).tookOut(item, "taken out again");
  }

  HandlingOutcome lost(String note) {
    return new Handling(job).lost(item, note);
  }

  HandlingOutcome found() {
    return new Handling(job).found(item);
  }

  HandlingOutcome reissue(String reason) {
    return new Handling(job).reissue(item, reason);
  }

  /** The answer names the new part. */
  HandlingOutcome replace(String reason, NewPart fresh) {
    return new Handling(job).replace(item, reason, fresh);
  }
}
