package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.print.Face;
import wherefrom.job.print.TagChoice;
import wherefrom.job.print.TagPrinting;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.PartKind;
import wherefrom.parts.TagCode;
import wherefrom.parts.Whereabouts;

/** Which tags or cards a call asks for. */
final class TagWishes {
  private static final int BASKETS = 8;
  private static final int MOST_BAGS = 500;
  private final OpenedJob bench;
  private final Call call;

  TagWishes(OpenedJob bench, Call call) {
    this.bench = bench;
    this.call = call;
  }

  /** The labels, at least one. */
  List<Face> faces(TagPrinting printing) throws BadInput {
    List<Face> faces = new ArrayList<>();
    for (TagChoice choice : choices()) {
      faces.addAll(printing.faces(choice));
    }
    if (faces.isEmpty()) {
      throw new BadInput("There is nothing of the kind to print.");
    }
    return faces;
  }

  private List<TagChoice> choices() throws BadInput {
    Optional<String> cards = call.find("--cards");
    List<String> only = call.listed("--only");
    boolean fresh = call.find("--new").isPresent();
    if ((cards.isPresent() ? 1 : 0) + (only.isEmpty() ? 0 : 1) + (fresh ? 1 : 0) > 1) {
      throw call.wrong("Give one of --cards, --only and --new.");
    }
    if (cards.isPresent()) {
      return List.of(cards(cards.get()));
    }
    List<TagChoice> choices = new ArrayList<>();
    for (String item : only) {
      choices.add(one(item));
    }
    if (choices.isEmpty()) {
      choices.add(fresh ? new TagChoice.NotYetPrinted() : new TagChoice.AllParts());
    }
    return choices;
  }

  private TagChoice cards(String which) throws BadInput {
    return switch (which) {
      case "places" -> new TagChoice.PlaceCards();
      case "actions" -> new TagChoice.ActionCards();
      case "baskets" ->
          new TagChoice.Baskets(call.number("--count", BASKETS, 1, TagCode.MOST_ITEM));
      case "bags" -> TagChoice.BagTags.more(call.number("--count", BASKETS, 1, MOST_BAGS));
      case "big-parts" -> TagChoice.BigPartTags.all();
      case "scanner" -> new TagChoice.ScannerSetUp();
      default ->
          throw call.wrong(
              "--cards: \""
                  + which
                  + "\" is not known. Use one of: places, actions, baskets, bags, big-parts, scanner.");
    };
  }

  private TagChoice one(String item) throws BadInput {
    Optional<PartKind> kind = PartKind.find(item);
    if (kind.isPresent()) {
      return new TagChoice.OfKind(kind.get());
    }
    int number = item.matches("[0-9]{1,4}") ? Integer.parseInt(item) : ofCode(item);
    boolean there =
        bench
            .job()
            .state()
            .findPart(number)
            .filter(part -> part.where() != Whereabouts.RETIRED)
            .isPresent();
    if (!there) {
      throw new BadInput("There is no part number " + number + " to tag in this job.");
    }
    return new TagChoice.OnePart(number);
  }

  private int ofCode(String code) throws BadInput {
    CodeLookup found = bench.find(code);
    if (found instanceof CodeLookup.APart part) {
      return part.part().part().item();
    }
    throw new BadInput(
        "--only: " + code + " is not a part of this job: " + Meaning.sentence(found));
  }
}
