package wherefrom.job;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.DecisionsAsked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PiecesCounted;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.SectionClosed;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.parts.PartKind;

/** What happened, in words, without a full stop: for the history and for taking back. */
public final class EntryWords {
  private final EngineJob job;

  private EntryWords(EngineJob job) {
    this.job = job;
  }

  public static String of(EngineJob job, JobEntry entry) {
    EntryWords words = new EntryWords(job);
    String aboutJob = words.aboutJob(entry);
    return aboutJob.isEmpty() ? words.aboutPart(entry) : aboutJob;
  }

  private String aboutJob(JobEntry entry) {
    if (entry instanceof JobOpened opened) {
      return "job \"" + opened.name() + "\" opened, " + opened.layout().title();
    }
    if (entry instanceof KindsTracked tracked) {
      return "tracked too: "
          + tracked.kinds().stream()
              .map(PartKind::plural)
              .sorted()
              .collect(Collectors.joining(", "));
    }
    if (entry instanceof Act act) {
      return act.entries().stream().map(each -> of(job, each)).collect(Collectors.joining("; "));
    }
    if (entry instanceof TagsPrinted printed) {
      return printed.items().size() + " " + printed.type().word() + " tags printed";
    }
    if (entry instanceof PlaceExcused excused) {
      String how =
          job.findSeated(excused.place()).isPresent() ? " left as it is: " : " left empty: ";
      return excused.place().words() + how + excused.reason();
    }
    if (entry instanceof SectionClosed closed) {
      return "section closed: " + closed.section();
    }
    if (entry instanceof DecisionsAsked asked) {
      return asked.everyPart()
          ? "a decision asked of every part"
          : "a decision asked only of parts in doubt";
    }
    if (entry instanceof StopGiven stop) {
      return (stop.item() > 0 ? part(stop.item()) + ": " : "scan: ") + stop.word().word();
    }
    if (entry instanceof SentToShop sent) {
      return items(sent.items()) + " to the machine shop, visit " + sent.visit();
    }
    if (entry instanceof BackFromShop back) {
      return items(back.items()) + " back from the machine shop, visit " + back.visit();
    }
    return "";
  }

  private String aboutPart(JobEntry entry) {
    if (entry instanceof PartOut out) {
      return part(out.item()) + " came out";
    }
    if (entry instanceof PartFitted fitted) {
      return part(fitted.item())
          + " fitted at "
          + fitted.place().words()
          + (fitted.wasOnPurpose() ? " on purpose (" + fitted.onPurpose() + ")" : "");
    }
    if (entry instanceof PartUnfitted unfitted) {
      return part(unfitted.item()) + " taken out again";
    }
    if (entry instanceof PartReplaced replaced) {
      return part(replaced.oldItem())
          + " replaced by new part "
          + number(replaced.newItem())
          + NewSizes.words(replaced)
          + ": "
          + replaced.reason();
    }
    if (entry instanceof TagReissued reissued) {
      return "tag of " + part(reissued.item()) + " printed anew, issue " + reissued.issue();
    }
    if (entry instanceof PiecesCounted counted) {
      return part(counted.item()) + ": " + counted.pieces() + " pieces on one tag";
    }
    return whereabouts(entry);
  }

  private String whereabouts(JobEntry entry) {
    if (entry instanceof PartLost lost) {
      return part(lost.item()) + " missing";
    }
    if (entry instanceof PartFound found) {
      return part(found.item()) + " found";
    }
    if (entry instanceof OffForWashing off) {
      return part(off.item()) + " off for washing, basket " + off.basket();
    }
    if (entry instanceof BackFromWashing back) {
      return part(back.item()) + " back from washing";
    }
    return findings(entry);
  }

  private String findings(JobEntry entry) {
    if (entry instanceof LookRecorded look) {
      return part(look.item()) + ", " + BenchWords.look(look.check(), look.look());
    }
    if (entry instanceof DecisionEntry made) {
      return parts(made.items()) + ": " + made.decision().word();
    }
    if (entry instanceof NoteAdded note) {
      return "note on " + subject(note.item()) + ": " + note.text();
    }
    if (entry instanceof PhotoAdded photo) {
      return "photograph of " + subject(photo.item());
    }
    if (entry instanceof CheckAnswered answered) {
      return new CheckWords(job).of(answered);
    }
    return BenchWords.of(entry, this::part);
  }

  private String subject(int item) {
    return item == 0 ? "the job" : part(item);
  }

  /** {@code 0012 cylinder 3, exhaust, pushrod}; the number alone when the part is gone again. */
  private String part(int item) {
    return job.findPart(item)
        .map(record -> number(item) + " " + record.part().words())
        .orElseGet(() -> number(item));
  }

  /** The part; of several their kind, where they are of one kind. */
  private String parts(List<Integer> items) {
    if (items.size() == 1) {
      return part(items.get(0));
    }
    List<PartKind> kinds =
        items.stream()
            .flatMap(item -> job.findPart(item).stream())
            .map(record -> record.part().kind())
            .distinct()
            .toList();
    return kinds.size() == 1 ? items.size() + " " + kinds.get(0).plural() : items(items);
  }

  private static String items(List<Integer> items) {
    return items.size() + (items.size() == 1 ? " part" : " parts");
  }

  private static String number(int item) {
    return String.format(Locale.ROOT, "%04d", item);
  }
}
