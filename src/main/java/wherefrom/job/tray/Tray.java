package wherefrom.job.tray;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Whereabouts;

/**
 * The tags on one photograph of a tray, and what the job knows of them.
 *
 * @param parts the job's parts whose tags were read, each once, in the order in which they lie
 * @param others what else was read: cards, baskets, tags that do not count
 * @param unread what looks like a tag and could not be read
 */
public record Tray(List<Lying> parts, List<Other> others, List<Unread> unread) {

  /** A part's tag where it lies. */
  public record Lying(PartRecord part, Sighting sighting) {}

  /** Another code where it lies, and what it is in words. */
  public record Other(String words, Sighting sighting) {}

  public Tray {
    parts = List.copyOf(parts);
    others = List.copyOf(others);
    unread = List.copyOf(unread);
  }

  /** What a reading means in a job. */
  public static Tray of(EngineJob job, JobNames names, Reading reading) {
    TagBook book = new TagBook(job, names);
    List<Lying> parts = new ArrayList<>();
    List<Other> others = new ArrayList<>();
    Set<Integer> items = new HashSet<>();
    for (Sighting sighting : reading.sightings()) {
      CodeLookup found = book.find(sighting.text());
      if (!(found instanceof CodeLookup.APart part)) {
        others.add(new Other(words(found), sighting));
      } else if (items.add(part.part().part().item())) {
        parts.add(new Lying(part.part(), sighting));
      }
    }
    return new Tray(parts, others, reading.unread());
  }

  private static String words(CodeLookup found) {
    return found.match(
        part -> part.part().part().words(),
        CodeLookup.ASpot::words,
        action -> "action card: " + action.action().words(),
        CodeLookup.ABasket::words,
        CodeLookup.ABag::words,
        CodeLookup.ABigPart::words,
        refused -> refused.verdict().sentence());
  }

  /** The parts that are still recorded as in the engine: they can be logged as out. */
  public List<PartRecord> toLog() {
    return parts.stream()
        .map(Lying::part)
        .filter(part -> part.where() == Whereabouts.IN_ENGINE)
        .toList();
  }
}
