package wherefrom.job.tables;

import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.photos.Photograph;
import wherefrom.job.tags.TagBook;

/** Bags of fasteners and big parts as tables. */
final class BagTables {
  private BagTables() {}

  /** A row a hole of a bag; a bag without holes has one row all the same. */
  static TidyTable bags(EngineJob job) {
    Rows rows =
        new Rows(
            "bags",
            "bag",
            "code",
            "what",
            "belongs_to",
            "pieces",
            "where",
            "order",
            "on_threads",
            "photographs",
            "hole",
            "across",
            "down",
            "length",
            "unit");
    BagBook book = BagBook.of(job);
    for (Bag bag : book.bags()) {
      List<BoltHole> holes = bag.filled().holes();
      if (holes.isEmpty()) {
        rows.add(row(job, book, bag, Optional.empty()));
      }
      holes.forEach(hole -> rows.add(row(job, book, bag, Optional.of(hole))));
    }
    return rows.table();
  }

  private static TidyCell[] row(EngineJob job, BagBook book, Bag bag, Optional<BoltHole> hole) {
    BagFilled filled = bag.filled();
    return new TidyCell[] {
      TidyCell.of(bag.number()),
      TidyCell.of(new TagBook(job, engine -> Optional.empty()).bag(bag.number()).typed()),
      TidyCell.of(filled.what()),
      TidyCell.of(book.belongsTo(bag)),
      TidyCell.of(filled.pieces()),
      TidyCell.of(bag.where().words()),
      TidyCell.of(filled.order()),
      TidyCell.of(filled.with() == AtAssembly.NOT_SAID ? "" : filled.with().words()),
      photographs(job, Subject.ofBag(bag.number())),
      number(hole.map(BoltHole::hole)),
      number(hole.flatMap(BoltHole::across)),
      number(hole.flatMap(BoltHole::down)),
      TidyCell.of(hole.flatMap(BoltHole::length).map(length -> length.number())),
      TidyCell.of(hole.flatMap(BoltHole::length).map(length -> length.unit().symbol()).orElse(""))
    };
  }

  private static TidyCell number(Optional<Integer> number) {
    return number.map(TidyCell::of).orElse(TidyCell.NONE);
  }

  private static TidyCell photographs(EngineJob job, Subject of) {
    return TidyCell.of(Photograph.listOf(job, of).size());
  }

  /** A row a big part. */
  static TidyTable bigParts(EngineJob job) {
    Rows rows =
        new Rows(
            "big-parts",
            "big_part",
            "code",
            "what",
            "kind",
            "bank",
            "where",
            "marks",
            "decision",
            "reason",
            "photographs");
    for (BigPartRecord part : BagBook.of(job).bigParts()) {
      rows.add(
          TidyCell.of(part.number()),
          TidyCell.of(part.part().code(job.engine()).typed()),
          TidyCell.of(part.words()),
          TidyCell.of(part.part().name().kind().key()),
          TidyCell.of(part.part().name().bank()),
          TidyCell.of(part.where().words()),
          TidyCell.of(part.marks()),
          TidyCell.of(part.decision().map(Decision::word).orElse("")),
          TidyCell.of(part.reason()),
          photographs(job, Subject.ofBigPart(part.number())));
    }
    return rows.table();
  }
}
