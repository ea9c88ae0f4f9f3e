package wherefrom.job.tags;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.BagBook;
import wherefrom.parts.Action;
import wherefrom.parts.Mistyping;
import wherefrom.parts.Part;
import wherefrom.parts.Places;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Verdict;

/** The codes of a job: what each tag says, and what a code that was read stands for. */
public final class TagBook {
  /** Baskets that are always known; more can be printed and are understood all the same. */
  private static final int BASKETS = 20;

  private final EngineJob job;
  private final JobNames names;

  public TagBook(EngineJob job, JobNames names) {
    this.job = job;
    this.names = names;
  }

  public TagCode of(Part part) {
    return part.code(job.engine());
  }

  /** Place cards count the spots as the job's opening does, whatever is tracked since. */
  public TagCode of(Spot spot) {
    int item = job.cards().indexOf(spot) + 1;
    return new TagCode(TagType.PLACE_CARD, job.engine(), item, 1);
  }

  public TagCode basket(int number) {
    return new TagCode(TagType.BASKET, job.engine(), number, 1);
  }

  public TagCode bag(int number) {
    return new TagCode(TagType.BAG, job.engine(), number, 1);
  }

  /** The spots that need a place card. */
  public List<Spot> spots() {
    return Places.spots(job.places());
  }

  /** Every tag that can be on the bench: parts with all their issues, cards, baskets. */
  public List<TagCode> issued() {
    List<TagCode> codes = new ArrayList<>();
    for (PartRecord part : job.parts()) {
      IntStream.rangeClosed(1, part.part().issue())
          .forEach(issue -> codes.add(of(part.part().withIssue(issue))));
    }
    spots().forEach(spot -> codes.add(of(spot)));
    Arrays.stream(Action.values()).forEach(action -> codes.add(action.code()));
    IntStream.rangeClosed(1, BASKETS).forEach(number -> codes.add(basket(number)));
    issuedBags(codes);
    return codes;
  }

  private void issuedBags(List<TagCode> codes) {
    BagBook book = BagBook.of(job);
    book.tags().forEach(number -> codes.add(bag(number)));
    book.bigParts().forEach(part -> codes.add(part.part().code(job.engine())));
  }

  /**
   * What a text stands for.
   *
   * @param text sixteen digits as read, or the six that a person types, spaces allowed
   */
  public CodeLookup find(String text) {
    String digits = text.replaceAll("\\s", "");
    return findForeign(text)
        .<CodeLookup>map(refused -> refused)
        .or(() -> TagCode.find(digits).map(this::find))
        .orElseGet(() -> findTyped(digits));
  }

  /**
   * What is answered to a text that is a tag of no job at all, the same whether one is open or not;
   * empty where it is a whole tag or the six figures of one.
   *
   * @param text as read or typed, spaces allowed
   */
  public static Optional<CodeLookup.Refused> findForeign(String text) {
    String digits = text.replaceAll("\\s", "");
    if (digits.matches("[0-9]{6}") || TagCode.find(digits).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new CodeLookup.Refused(
            TagCode.isSixteenDigits(digits)
                ? new CodeVerdict.DigitsDisagree(digits)
                : new CodeVerdict.NotOneOfOurs(text, false)));
  }

  /** What a tag stands for. */
  public CodeLookup find(TagCode code) {
    if (code.type() == TagType.ACTION_CARD && code.engine() == 0) {
      return Action.find(code.item())
          .<CodeLookup>map(CodeLookup.AnAction::new)
          .orElseGet(() -> notIssued(code));
    }
    if (code.engine() != job.engine()) {
      return new CodeLookup.Refused(
          new CodeVerdict.WrongEngine(code.engine(), names.find(code.engine())));
    }
    return switch (code.type()) {
      case PART -> findPart(code);
      case PLACE_CARD -> findSpot(code);
      case BASKET -> new CodeLookup.ABasket(code.item());
      case BAG -> new CodeLookup.ABag(code.item(), BagBook.of(job).findBag(code.item()));
      case BIG_PART -> findBigPart(code);
      case ACTION_CARD -> notIssued(code);
    };
  }

  private CodeLookup findPart(TagCode code) {
    Optional<PartRecord> part = job.findPart(code.item());
    if (part.isEmpty() || code.issue() > part.get().part().issue()) {
      return notIssued(code);
    }
    if (code.issue() < part.get().part().issue()) {
      return new CodeLookup.Refused(
          new Verdict.Retired(part.get().part(), Optional.of(part.get().part())));
    }
    return new CodeLookup.APart(part.get());
  }

  private CodeLookup findSpot(TagCode code) {
    List<Spot> spots = job.cards();
    return code.item() <= spots.size() && code.issue() == 1
        ? new CodeLookup.ASpot(spots.get(code.item() - 1))
        : notIssued(code);
  }

  private CodeLookup findBigPart(TagCode code) {
    return BagBook.of(job)
        .findBigPart(code.item())
        .filter(part -> code.issue() == 1)
        .<CodeLookup>map(CodeLookup.ABigPart::new)
        .orElseGet(() -> notIssued(code));
  }

  private static CodeLookup notIssued(TagCode code) {
    return new CodeLookup.Refused(new CodeVerdict.NotOneOfOurs(code.digits(), true));
  }

  /**
   * A current tag goes before an older issue that happens to share the six digits. Figures of an
   * action card are refused: nobody needs to type one, and a part's tag may be one slip away.
   */
  private CodeLookup findTyped(String digits) {
    List<TagCode> matches = matches(digits);
    List<TagCode> current = matches.stream().filter(this::isCurrent).toList();
    if (current.size() == 1 && isCard(current.get(0))) {
      return typedCard(digits, current.get(0));
    }
    List<TagCode> near = near(current, digits);
    List<String> others = current.isEmpty() ? List.of() : names.listTyped(digits, job.engine());
    if (current.size() > 1 || !others.isEmpty() || !near.isEmpty()) {
      return new CodeLookup.Refused(alsoFits(current, near, others));
    }
    return Stream.concat(current.stream(), matches.stream())
        .findFirst()
        .map(this::find)
        .orElseGet(() -> new CodeLookup.Refused(new CodeVerdict.DigitsDisagree(digits)));
  }

  private static boolean isCard(TagCode code) {
    return code.type() == TagType.ACTION_CARD;
  }

  private boolean isCurrent(TagCode code) {
    return !(find(code) instanceof CodeLookup.Refused);
  }

  private static CodeLookup typedCard(String digits, TagCode card) {
    return new CodeLookup.Refused(
        new CodeVerdict.TypedCard(digits, Action.find(card.item()).orElseThrow()));
  }

  /**
   * The parts that were meant where one slip made their figures those of a card, basket, bag or big
   * part. Between two tags of parts no slip lies: their check digits tell.
   */
  private List<TagCode> near(List<TagCode> current, String digits) {
    if (current.stream().allMatch(code -> code.type() == TagType.PART)) {
      return List.of();
    }
    return issued().stream()
        .filter(code -> code.type() == TagType.PART && Mistyping.isOne(plain(code), digits))
        .filter(this::isCurrent)
        .toList();
  }

  private static String plain(TagCode code) {
    return code.typed().replace(" ", "");
  }

  private CodeVerdict alsoFits(List<TagCode> here, List<TagCode> near, List<String> others) {
    return new CodeVerdict.AlsoFits(here.get(0).typed(), means(here), means(near), others);
  }

  private Map<String, String> means(List<TagCode> codes) {
    Map<String, String> means = new LinkedHashMap<>();
    codes.forEach(code -> means.put(code.digits(), find(code).words()));
    return means;
  }

  private List<TagCode> matches(String digits) {
    int item = Integer.parseInt(digits.substring(0, 4));
    return Stream.concat(issued().stream(), countedWith(item))
        .filter(code -> code.item() == item && plain(code).equals(digits))
        .distinct()
        .toList();
  }

  /**
   * The typed codes of the tags that can hang in this job, without spaces; action cards are any's.
   */
  public Set<String> typed() {
    return issued().stream()
        .filter(code -> !isCard(code))
        .map(TagBook::plain)
        .collect(Collectors.toSet());
  }

  /** Baskets and bags of any number are understood. */
  private Stream<TagCode> countedWith(int item) {
    return item < 1 ? Stream.empty() : Stream.of(basket(item), bag(item));
  }
}
