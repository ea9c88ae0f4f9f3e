package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.engine.Section;
import wherefrom.job.Caution;
import wherefrom.job.EngineJob;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.handling.NewPart;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.torque.TorqueCards;
import wherefrom.job.torque.TorqueRecord;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Cycle;
import wherefrom.text.UsualWords;

/** What is still missing, section by section, and what sits in each other's places. */
final class MissingModel {

  /**
   * A section of the engine with its open places.
   *
   * @param fittedBut how many parts sit in it although something stands against them
   */
  record SectionLine(Section section, List<Place> open, int fittedBut, boolean closed) {
    SectionLine {
      open = List.copyOf(open);
    }
  }

  /** The reasons to leave a place empty. */
  static final UsualWords EXCUSES =
      UsualWords.orOther("not in this engine", "fitted at the machine shop", "comes later");

  private final OpenJob job;
  private final ToFit missing;
  private String trouble = "";

  MissingModel(OpenJob job) {
    this.job = job;
    this.missing = new ToFit(job);
  }

  private EngineJob state() {
    return job.state();
  }

  /** What went wrong with the last deed, in a sentence; empty when nothing did. */
  String trouble() {
    return trouble;
  }

  /** The open places of one section. */
  List<Place> open(Section section) {
    return missing.places(section);
  }

  /** How many places are open in all. */
  int open() {
    return missing.sections().stream().mapToInt(each -> missing.places(each).size()).sum();
  }

  /** What is so at an open place, and which part is wanted there. */
  String words(Place place) {
    String wanted =
        state()
            .bench()
            .findRightful(place)
            .map(part -> "Part " + part.code(job.state().engine()).typed() + ": ")
            .orElse("");
    return wanted + state().state(place).words();
  }

  /** Every section that has a tracked place, with what is open in it. */
  List<SectionLine> sections() {
    return missing.sections().stream()
        .map(
            section ->
                new SectionLine(
                    section,
                    missing.places(section),
                    missing.fittedBut(section).size(),
                    state().closedSections().contains(section.key())))
        .toList();
  }

  /** How far the torque cards are, in a few words. */
  String torqueWords() {
    int cards = TorqueCards.holding(state()).size();
    int open = TorqueRecord.open(state()).size();
    if (cards == 0) {
      String mains = state().layout().mainCaps() ? "main caps" : "case bolts";
      return "No card yet: head bolts, " + mains + " and rod caps need one";
    }
    return open == 0 ? "All done and checked by a second person" : open + " of " + cards + " open";
  }

  /** What can hurt a person or spoil a part while this section goes together. */
  List<Caution> cautions(Section section) {
    return state().places().stream()
        .filter(place -> Section.of(state().layout(), place.spot()).equals(section))
        .map(place -> place.kind().stage())
        .distinct()
        .flatMap(stage -> Caution.atStage(stage).stream())
        .distinct()
        .toList();
  }

  /** Whether everything is closed, so that the engine is to be started. */
  boolean isFirstStartDue() {
    return new FirstStart(job).isDue();
  }

  /** Closes a section; says why not while a place in it is open. */
  void close(Section section) {
    attempt(
        () ->
            missing.finish(section)
                ? ""
                : notClosed(missing.places(section).size(), missing.fittedBut(section).size()));
  }

  private static String notClosed(int open, int fittedBut) {
    return "Not finished: " + count(open, fittedBut) + ".";
  }

  void excuse(Place place, String reason) {
    attempt(
        () -> {
          missing.leave(place, reason);
          return "";
        });
  }

  /** The part that belongs in a place: the one that the list names, and a new one replaces. */
  Optional<Part> rightful(Place place) {
    return state().bench().findRightful(place);
  }

  /** A part is replaced by a new one; its item number, whose tag can be printed. */
  Optional<Integer> replace(Part old, String reason, NewPart fresh) {
    int[] taken = {0};
    attempt(
        () -> {
          HandlingOutcome done = new Handling(job).replace(old.item(), reason, fresh);
          if (done instanceof HandlingOutcome.Logged logged) {
            taken[0] = logged.part().part().item();
            return "";
          }
          return ((HandlingOutcome.Refused) done).sentence();
        });
    return taken[0] == 0 ? Optional.empty() : Optional.of(taken[0]);
  }

  /** What is so in a section, in words. */
  static String words(SectionLine line) {
    if (line.closed()) {
      return "finished";
    }
    return line.open().isEmpty() && line.fittedBut() == 0
        ? "every part is in; its torque cards stand below"
        : count(line.open().size(), line.fittedBut());
  }

  /** {@code 3 to fit, 1 in, but …}: what is left out does not occur. */
  static String count(int toFit, int fittedBut) {
    String but = fittedBut + " in, but something stands against it";
    if (fittedBut == 0) {
      return toFit + " to fit";
    }
    return toFit == 0 ? but : toFit + " to fit, " + but;
  }

  /** The parts that sit in a section although something stands against them. */
  List<ToFit.FittedBut> fittedBut(Section section) {
    return missing.fittedBut(section);
  }

  /** The person has taken a part out that should not sit where it sits. */
  void takeOut(Part part) {
    attempt(
        () -> {
          HandlingOutcome done =
              new Handling(job).tookOut(part.item(), "something stands against it");
          return done instanceof HandlingOutcome.Refused refused ? refused.sentence() : "";
        });
  }

  /** {@code take pushrod 0012 46 out of 3 EX: it belongs at 5 EX}. */
  String words(Cycle.Move move) {
    return String.format(
        Locale.ROOT,
        "Take %s out of %s: it belongs at %s",
        code(move),
        move.from().brief(),
        move.to().brief());
  }

  /** {@code from 3 EX to 5 EX}: the same where letters are large; the tag names the first part. */
  static String brief(Cycle.Move move) {
    return "From " + move.from().brief() + " to " + move.to().brief();
  }

  /** {@code pushrod 0012 46}. */
  String code(Cycle.Move move) {
    return move.part().kind().word() + " " + move.part().code(state().engine()).typed();
  }

  /** How many parts sit in another one's place. */
  int wrong() {
    return cycles().stream().mapToInt(cycle -> cycle.moves().size()).sum();
  }

  /** The shortest way out of what sits in each other's places. */
  List<Cycle> cycles() {
    return Cycle.of(state().fitted());
  }

  /** The person has taken this part out again, as the way out says. */
  void takeOut(Cycle.Move move) {
    attempt(
        () -> {
          HandlingOutcome done = new Handling(job).tookOut(move.part().item(), "put right");
          return done instanceof HandlingOutcome.Refused refused ? refused.sentence() : "";
        });
  }

  private void attempt(Supplier<String> deed) {
    try {
      trouble = deed.get();
    } catch (LogbookException | IllegalArgumentException e) {
      trouble = LogbookException.sentence(e);
    }
  }
}
