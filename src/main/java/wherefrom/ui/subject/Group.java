package wherefrom.ui.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;

/**
 * All parts of a kind, or every place of a feature.
 *
 * @param key the kind's or the feature's
 * @param words in the plural where there are several
 */
public record Group(String key, String words, List<Subject> subjects) {
  public Group {
    subjects = List.copyOf(subjects);
  }

  /** Those of its subjects that are meant. */
  public Group only(Predicate<Subject> meant) {
    return new Group(key, words, subjects.stream().filter(meant).toList());
  }

  /** Whether it is of what can be read only before the engine comes apart. */
  public static boolean isBeforeTeardown(String key) {
    return Feature.find(key).filter(Feature::isBeforeTeardown).isPresent();
  }

  /** The kinds that the job tracks, in the order of taking apart, then the features that it has. */
  public static List<Group> of(EngineJob job) {
    return job.remember(All.class, All::of).groups();
  }

  /** Those of a job, by their order. */
  private record All(List<Group> groups) {
    static All of(EngineJob job) {
      return new All(List.copyOf(made(job)));
    }
  }

  private static List<Group> made(EngineJob job) {
    List<Group> groups = new ArrayList<>();
    for (PartKind kind : PartKind.values()) {
      List<Subject> parts =
          job.parts().stream()
              .filter(part -> part.part().kind() == kind && part.where() != Whereabouts.RETIRED)
              .map(PartRecord::part)
              .map(part -> Subject.ofPart(part.item()))
              .toList();
      if (!parts.isEmpty()) {
        groups.add(new Group(kind.key(), Words.capital(kind.plural()), parts));
      }
    }
    for (Feature feature : Feature.values()) {
      List<Subject> places = new ArrayList<>();
      feature
          .where(job.layout())
          .forEach(where -> places.add(new Subject.AFeature(feature, where)));
      if (!places.isEmpty()) {
        String words = places.size() > 1 ? feature.plural() : feature.word();
        groups.add(new Group(feature.key(), Words.capital(words), places));
      }
    }
    return groups;
  }
}
