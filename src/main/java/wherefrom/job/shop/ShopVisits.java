package wherefrom.job.shop;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.parts.TagType;
import wherefrom.quantity.Amount;

/** The visits to the machine shop that the standing entries give. */
final class ShopVisits {
  private static final EntryFold<ShopVisits> READS =
      EntryFold.<ShopVisits>none()
          .at(SentToShop.class, ShopVisits::sent)
          .at(BackFromShop.class, ShopVisits::back)
          .at(ShopLineAdded.class, ShopVisits::added)
          .at(ShopLineBack.class, ShopVisits::back);

  /** A visit as far as it is read. */
  private record Visit(
      Instant begun, Map<Integer, ShopVisit.Sent> parts, Map<Integer, ShopVisit.Line> lines) {

    private Visit(Instant begun) {
      this(begun, new LinkedHashMap<>(), new LinkedHashMap<>());
    }

    private ShopVisit as(int number) {
      return new ShopVisit(
          number, begun, new ArrayList<>(parts.values()), new ArrayList<>(lines.values()));
    }
  }

  private final EngineJob job;
  private final Map<Integer, Visit> visits = new TreeMap<>();
  private final Map<String, Subject.Beside> byWords = new LinkedHashMap<>();

  private ShopVisits(EngineJob job) {
    this.job = job;
    BagBook book = BagBook.of(job);
    for (BigPartRecord part : book.bigParts()) {
      byWords.putIfAbsent(part.words(), new Subject.Beside(TagType.BIG_PART, part.number()));
    }
    for (Bag bag : book.bags()) {
      byWords.putIfAbsent(bag.words(), new Subject.Beside(TagType.BAG, bag.number()));
    }
  }

  /** Every visit, the first first. */
  static List<ShopVisit> of(EngineJob job) {
    ShopVisits fold = new ShopVisits(job);
    job.standing().forEach(logged -> READS.take(fold, logged));
    return fold.visits.entrySet().stream().map(one -> one.getValue().as(one.getKey())).toList();
  }

  private Visit visit(int number, LoggedEntry logged) {
    return visits.computeIfAbsent(number, key -> new Visit(logged.time()));
  }

  private void sent(SentToShop sent, LoggedEntry logged) {
    Visit visit = visit(sent.visit(), logged);
    for (int item : sent.items()) {
      visit.parts().put(item, new ShopVisit.Sent(job.getPart(item).part(), sent.wanted(), false));
    }
  }

  private void back(BackFromShop back, LoggedEntry logged) {
    Visit visit = visit(back.visit(), logged);
    for (int item : back.items()) {
      visit
          .parts()
          .computeIfPresent(item, (key, was) -> new ShopVisit.Sent(was.part(), was.wanted(), true));
    }
  }

  private void added(ShopLineAdded line, LoggedEntry logged) {
    visit(line.visit(), logged)
        .lines()
        .put(line.line(), new ShopVisit.Line(line, 0, List.of(), beside(line)));
  }

  /** Lines of before it was kept name the bag or the big part, and no more. */
  private Optional<Subject.Beside> beside(ShopLineAdded line) {
    return line.beside().or(() -> Optional.ofNullable(byWords.get(line.what())));
  }

  private void back(ShopLineBack back, LoggedEntry logged) {
    visit(back.visit(), logged)
        .lines()
        .computeIfPresent(back.line(), (key, was) -> back(was, back));
  }

  private static ShopVisit.Line back(ShopVisit.Line was, ShopLineBack back) {
    List<String> returned = new ArrayList<>(was.returned());
    String size = back.size().map(Amount::text).orElse("");
    String words = (size + " " + back.done()).strip();
    if (!words.isEmpty()) {
      returned.add(words);
    }
    return new ShopVisit.Line(was.line(), was.back() + back.count(), returned, was.beside());
  }
}
