package wherefrom.job.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.BagBook;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.entry.TakenBack;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Part;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;

/**
 * Which labels a choice of tags means, and the record of what was printed. Printed is what a
 * printer has taken, or what a person says is on paper; a file that was saved is neither. On the
 * command line, where nothing else prints, the file that it makes is the sheet.
 */
public final class TagPrinting {
  private static final EntryFold<Set<Integer>> ON_A_SHEET =
      EntryFold.<Set<Integer>>none()
          .on(TagsPrinted.class, TagPrinting::add)
          .on(TagReissued.class, (items, reissued) -> items.remove(reissued.item()));

  private static final EntryFold<Set<Numbered>> ON_PAPER =
      EntryFold.<Set<Numbered>>none()
          .on(
              TagsPrinted.class,
              (cards, printed) ->
                  printed.items().forEach(item -> cards.add(new Numbered(printed.type(), item))));

  /** A tag or card, whatever printing of it. */
  private record Numbered(TagType type, int item) {}

  private final OpenJob job;

  public TagPrinting(OpenJob job) {
    this.job = job;
  }

  /** The labels, in the order of printing; empty when there is nothing of the kind. */
  public List<Face> faces(TagChoice choice) {
    return choice.match(
        parts -> List.copyOf(parts(parts).stream().map(this::face).toList()),
        cards -> placeCards(),
        cards -> List.copyOf(TagFaces.actions()),
        baskets -> baskets(baskets.count()),
        bags -> bags(bags),
        bigParts -> bigParts(bigParts.number()),
        card -> List.of(ScannerFace.card()));
  }

  private List<Face> placeCards() {
    TagBook book = book();
    return book.spots().stream()
        .<Face>map(spot -> TagFaces.placeCard(book.of(spot), spot, job.state().name()))
        .toList();
  }

  private List<Face> baskets(int count) {
    return IntStream.rangeClosed(1, count)
        .<Face>mapToObj(number -> TagFaces.basket(book().basket(number), job.state().name()))
        .toList();
  }

  private List<Face> bags(TagChoice.BagTags bags) {
    int first = bags.first() > 0 ? bags.first() : BagBook.of(job.state()).nextTag();
    return IntStream.range(first, Math.min(first + bags.count(), TagCode.MOST_ITEM + 1))
        .<Face>mapToObj(number -> TagFaces.bag(book().bag(number), job.state().name()))
        .toList();
  }

  private List<Face> bigParts(int number) {
    EngineJob state = job.state();
    return BagBook.of(state).bigParts().stream()
        .filter(record -> number == 0 || record.number() == number)
        .<Face>map(record -> TagFaces.bigPart(record.part(), state.engine(), state.name()))
        .toList();
  }

  private TagBook book() {
    return new TagBook(job.state(), engine -> Optional.empty());
  }

  private TagFace face(Part part) {
    EngineJob state = job.state();
    return TagFaces.part(part, state.engine(), state.layout(), state.name());
  }

  private List<Part> parts(TagChoice.OfParts choice) {
    Set<Integer> printed = printed();
    return job.state().parts().stream()
        .filter(part -> part.where() != Whereabouts.RETIRED)
        .map(PartRecord::part)
        .filter(part -> choice.isMeant(part, printed))
        .toList();
  }

  /**
   * The cards that a job is put together by and of which one is on no sheet, in the order of
   * printing. Who has fitted a part without them needs none.
   */
  public List<TagChoice> cardsLeft() {
    if (!job.state().fitted().isEmpty()) {
      return List.of();
    }
    Set<Numbered> onPaper = new LinkedHashSet<>();
    job.state().standing().forEach(logged -> ON_PAPER.take(onPaper, logged));
    return Stream.<TagChoice>of(new TagChoice.PlaceCards(), new TagChoice.ActionCards())
        .filter(choice -> !onPaper.containsAll(numbers(faces(choice))))
        .toList();
  }

  private static List<Numbered> numbers(List<Face> faces) {
    return faces.stream()
        .filter(TagFace.class::isInstance)
        .map(face -> ((TagFace) face).code())
        .map(code -> new Numbered(code.type(), code.item()))
        .toList();
  }

  private static void add(Set<Integer> items, TagsPrinted printed) {
    if (printed.type() == TagType.PART) {
      items.addAll(printed.items());
    }
  }

  /** The parts whose present tag is on a sheet. */
  private Set<Integer> printed() {
    Set<Integer> items = new LinkedHashSet<>();
    job.state().standing().forEach(logged -> ON_A_SHEET.take(items, logged));
    return items;
  }

  /**
   * Logs that these labels are printed. The numbers of more bags are given out with it: where
   * another bench has printed them since the labels were made, they are not logged a second time.
   *
   * @param choice what the labels were made of
   * @param stock the label stock's name
   * @return false where another bench has; the sheet is then to be thrown away
   */
  public boolean printed(TagChoice choice, List<Face> faces, String stock) {
    return job.asOne(
        () -> {
          boolean free = !(choice instanceof TagChoice.BagTags bags) || areFree(bags, faces);
          if (free) {
            printed(faces, stock);
          }
          return free;
        });
  }

  private boolean areFree(TagChoice.BagTags bags, List<Face> faces) {
    int next = BagBook.of(job.state()).nextTag();
    return bags.first() > 0
        || faces.stream()
            .allMatch(face -> face instanceof TagFace tag && tag.code().item() >= next);
  }

  /**
   * Logs that these labels are printed, whose numbers are asked for within the same act or are
   * known to be the job's.
   *
   * @param stock the label stock's name
   * @return the sequence of the step; 0 where the labels bear no number
   */
  public long printed(List<Face> faces, String stock) {
    Map<TagType, List<Integer>> byType = new LinkedHashMap<>();
    for (Face face : faces) {
      if (face instanceof TagFace tag) {
        byType.computeIfAbsent(tag.code().type(), type -> new ArrayList<>()).add(tag.code().item());
      }
    }
    return job.asOne(
        () ->
            byType.entrySet().stream()
                .map(it -> job.record(new TagsPrinted(it.getKey(), it.getValue(), stock)))
                .mapToLong(LoggedEntry::sequence)
                .max()
                .orElse(0));
  }

  /** What was logged as printed by this step never came to be: its numbers are free again. */
  public void neverCame(long sequence) {
    job.inOne(() -> job.record(new TakenBack(sequence)));
  }
}
