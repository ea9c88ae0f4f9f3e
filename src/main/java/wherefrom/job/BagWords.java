package wherefrom.job;

import wherefrom.inspection.Subject;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BigPartDecided;
import wherefrom.job.entry.BigPartMarked;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.GasketsListed;
import wherefrom.parts.BigPartName;
import wherefrom.parts.TagType;
import wherefrom.text.Words;

/** What happened to bags and big parts, in words. */
final class BagWords {
  /** The kinds of entries that are said here. */
  static final EntryRows<EntryWords, String> ROWS =
      EntryRows.<EntryWords, String>none()
          .on(BagFilled.class, (words, filled) -> filled(filled))
          .on(BagMoved.class, (words, moved) -> moved(moved))
          .on(BigPartsNamed.class, (words, named) -> named(named))
          .on(BigPartMoved.class, BagWords::moved)
          .on(
              BigPartMarked.class,
              (words, it) -> bigPart(words, it.number()) + ", marks: " + it.marks())
          .on(
              BigPartDecided.class,
              (words, it) -> bigPart(words, it.number()) + ": " + it.decision().word())
          .on(
              GasketsListed.class,
              (words, it) ->
                  "gaskets and seals " + (it.listed() ? "on" : "off") + " the list to buy");

  private BagWords() {}

  /** What was photographed. */
  static String of(EntryWords words, Subject.Beside beside) {
    return beside.type() == TagType.BAG ? bag(beside.number()) : bigPart(words, beside.number());
  }

  private static String filled(BagFilled filled) {
    return bag(filled.number())
        + ": "
        + filled.what()
        + ", "
        + Words.count(filled.pieces(), "piece");
  }

  private static String moved(BagMoved moved) {
    return bag(moved.number()) + " " + moved.to().words() + EntryWords.behind(moved.note());
  }

  private static String named(BigPartsNamed named) {
    return named.names().size() == 1
        ? "on the list: " + named.names().get(0).words()
        : named.names().size() + " big parts on the list";
  }

  private static String moved(EntryWords words, BigPartMoved moved) {
    return bigPart(words, moved.number())
        + " "
        + moved.to().words()
        + EntryWords.behind(moved.note());
  }

  private static String bag(int number) {
    return "bag " + number;
  }

  /** Its name; the number alone when it is gone again. */
  private static String bigPart(EntryWords words, int number) {
    return words.job().standing().stream()
        .map(LoggedEntry::entry)
        .filter(BigPartsNamed.class::isInstance)
        .map(BigPartsNamed.class::cast)
        .filter(named -> number >= named.first() && number < named.first() + named.names().size())
        .map(named -> named.names().get(number - named.first()))
        .map(BigPartName::words)
        .findFirst()
        .orElse("big part " + number);
  }
}
