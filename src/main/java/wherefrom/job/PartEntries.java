package wherefrom.job;

import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.DecisionMade;
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
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.entry.TagReissued;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** The entries that speak of parts, and what each of them changes in a job's ledger. */
final class PartEntries {
  static final EntryFold<PartsLedger> READS =
      EntryFold.<PartsLedger>none()
          .at(PartOut.class, (parts, entry, at) -> out(parts, entry.item(), at))
          .at(PartLost.class, PartEntries::lose)
          .at(PartFound.class, (parts, entry, at) -> out(parts, entry.item(), at))
          .at(OffForWashing.class, PartEntries::wash)
          .at(BackFromWashing.class, (parts, entry, at) -> out(parts, entry.item(), at))
          .at(SentToShop.class, PartEntries::send)
          .at(BackFromShop.class, PartEntries::back)
          .at(PartFitted.class, PartEntries::fit)
          .at(PartUnfitted.class, (parts, entry, at) -> out(parts, entry.item(), at))
          .at(PartReplaced.class, PartEntries::replace)
          .on(TagReissued.class, PartEntries::reissue)
          .on(PiecesCounted.class, PartEntries::count)
          .at(LookRecorded.class, PartEntries::look)
          .at(DecisionMade.class, PartEntries::decide)
          .at(SetDecided.class, PartEntries::decide)
          .at(NoteAdded.class, PartEntries::note)
          .at(PhotoAdded.class, PartEntries::photograph);

  private PartEntries() {}

  private static void lose(PartsLedger parts, PartLost lost, LoggedEntry logged) {
    move(parts, lost.item(), Whereabouts.LOST, lost.note(), logged.sequence());
  }

  private static void wash(PartsLedger parts, OffForWashing off, LoggedEntry logged) {
    away(
        parts,
        List.of(off.item()),
        Whereabouts.WASHING,
        "basket " + off.basket(),
        logged.sequence());
  }

  private static void send(PartsLedger parts, SentToShop sent, LoggedEntry logged) {
    away(parts, sent.items(), Whereabouts.AT_SHOP, "visit " + sent.visit(), logged.sequence());
  }

  private static void back(PartsLedger parts, BackFromShop back, LoggedEntry logged) {
    back.items().forEach(item -> out(parts, item, logged));
    parts.changeAll(back.items(), PartEntries::spent);
  }

  private static void out(PartsLedger parts, int item, LoggedEntry logged) {
    move(parts, item, Whereabouts.OUT, "", logged.sequence());
  }

  /** A part that was replaced stays retired: fitted on purpose and taken out, it is so again. */
  private static void move(
      PartsLedger parts, int item, Whereabouts to, String note, long sequence) {
    Whereabouts now = to == Whereabouts.OUT && !parts.isInUse(item) ? Whereabouts.RETIRED : to;
    parts.change(item, part -> part.at(now, note, part.dates().moved(sequence)));
  }

  private static void away(
      PartsLedger parts, List<Integer> items, Whereabouts where, String to, long sequence) {
    parts.changeAll(items, part -> part.away(where, to, part.dates().moved(sequence)));
  }

  private static void fit(PartsLedger parts, PartFitted fitted, LoggedEntry logged) {
    parts.bind(fitted.item(), fitted.place());
    parts.change(
        fitted.item(), one -> one.at(Whereabouts.FITTED, one.dates().fitted(logged.sequence())));
  }

  /** The step that made the part may have been taken back; its tag then stands for nothing. */
  private static void reissue(PartsLedger parts, TagReissued reissued) {
    if (parts.find(reissued.item()).isPresent()) {
      parts.change(reissued.item(), part -> part.with(part.part().withIssue(reissued.issue())));
    }
  }

  private static void count(PartsLedger parts, PiecesCounted counted) {
    parts.change(counted.item(), part -> part.with(part.part().withPieces(counted.pieces())));
  }

  private static void look(PartsLedger parts, LookRecorded look, LoggedEntry logged) {
    parts.change(look.item(), part -> part.looked(look.check(), look.look(), logged.sequence()));
  }

  private static void decide(PartsLedger parts, DecisionEntry made, LoggedEntry logged) {
    parts.changeAll(
        made.items(), part -> part.decided(Optional.of(made.decision()), logged.sequence()));
  }

  private static void note(PartsLedger parts, NoteAdded note, LoggedEntry logged) {
    remark(parts, note.item(), new Remark(logged.time(), note.text(), Optional.empty()));
  }

  private static void photograph(PartsLedger parts, PhotoAdded photo, LoggedEntry logged) {
    remark(
        parts, photo.item(), new Remark(logged.time(), photo.caption(), Optional.of(photo.file())));
  }

  /** What is about the whole job, with item 0, is about no part. */
  private static void remark(PartsLedger parts, int item, Remark remark) {
    if (item > 0) {
      parts.change(item, part -> part.remarked(remark));
    }
  }

  /** What was decided for machining is done once the part is back: decide anew. */
  private static PartRecord spent(PartRecord part) {
    return part.decision().equals(Optional.of(Decision.MACHINE))
        ? part.decided(Optional.empty(), 0)
        : part;
  }

  private static void replace(PartsLedger parts, PartReplaced replaced, LoggedEntry logged) {
    long sequence = logged.sequence();
    PartRecord old = parts.get(replaced.oldItem());
    Place home = old.part().home();
    Part fresh = new Part(replaced.newItem(), home, 1, old.part().pieces(), true);
    parts.takeOn(
        PartRecord.of(fresh, Whereabouts.OUT, PartDates.takenOn(sequence)), replaced.oldItem());
    move(parts, replaced.oldItem(), Whereabouts.RETIRED, replaced.reason(), sequence);
  }
}
