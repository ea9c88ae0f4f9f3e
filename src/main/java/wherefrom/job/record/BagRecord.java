package wherefrom.job.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.photos.Photograph;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;

/** What came off beside the tagged parts: big parts, bags of fasteners, what is always new. */
final class BagRecord {
  private final EngineJob job;
  private final BagBook book;

  private BagRecord(EngineJob job) {
    this.job = job;
    this.book = BagBook.of(job);
  }

  /** One row a big part, then one a bag, then one a kind of gasket; what is off or out is open. */
  static RecordSection section(EngineJob job) {
    BagRecord record = new BagRecord(job);
    List<RecordSection.Row> rows = new ArrayList<>();
    record.book.bigParts().forEach(part -> rows.add(record.row(part)));
    record.book.bags().forEach(bag -> rows.add(record.row(bag)));
    AlwaysNew.of(record.book).forEach(line -> rows.add(row(line)));
    return new RecordSection(
        RecordTable.BAGS,
        List.of("what", "holds, marks", "decided, at assembly", "where", "photographs"),
        rows,
        "No bag and no big part was kept.");
  }

  private RecordSection.Row row(BigPartRecord part) {
    String decided = part.decision().map(Decision::word).orElse("");
    String why = part.reason().isEmpty() ? "" : ": " + part.reason();
    return new RecordSection.Row(
        List.of(
            part.words(),
            part.marks(),
            decided.isEmpty() ? again(part) : decided + why,
            whereabouts(part.where(), part.note()),
            photographs(Subject.ofBigPart(part.number()))),
        !part.isOn());
  }

  private static String again(BigPartRecord part) {
    return part.before().map(was -> "off again, was " + was.word()).orElse("");
  }

  private RecordSection.Row row(Bag bag) {
    BagFilled filled = bag.filled();
    String whose = book.belongsTo(bag).isEmpty() ? "" : ", for the " + book.belongsTo(bag);
    return new RecordSection.Row(
        List.of(
            bag.words(),
            filled.pieces() + whose + lengths(filled.holes()),
            assembly(filled),
            whereabouts(bag.where(), bag.note()),
            photographs(Subject.ofBag(bag.number()))),
        bag.where() != Whereabouts.FITTED);
  }

  private static String whereabouts(Whereabouts where, String why) {
    return where.words() + (why.isEmpty() ? "" : ": " + why);
  }

  private static String assembly(BagFilled filled) {
    String with = filled.with() == AtAssembly.NOT_SAID ? "" : filled.with().words();
    String between = filled.order().isEmpty() || with.isEmpty() ? "" : "; ";
    return filled.order() + between + with;
  }

  /** {@code ; hole 1: 2.5 in, hole 2: 3 in}; empty where no length is known. */
  private static String lengths(List<BoltHole> holes) {
    String known =
        holes.stream()
            .sorted(Comparator.comparingInt(BoltHole::hole))
            .flatMap(hole -> told(hole).stream())
            .collect(Collectors.joining(", "));
    return known.isEmpty() ? "" : "; " + known;
  }

  private static Optional<String> told(BoltHole hole) {
    return hole.length().map(Amount::text).map(length -> "hole " + hole.hole() + ": " + length);
  }

  private String photographs(Subject of) {
    int count = Photograph.listOf(job, of).size();
    return count == 0 ? "" : Integer.toString(count);
  }

  private static RecordSection.Row row(AlwaysNew line) {
    return new RecordSection.Row(
        List.of(
            line.what(),
            line.pieces() + ", always new",
            "",
            "opened: " + String.join(", ", line.because()),
            ""),
        false);
  }
}
