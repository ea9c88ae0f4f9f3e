package wherefrom.job;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.parts.TagType;

/**
 * Which parts an entry speaks of: those in its components named item, items, oldItem, newItem, and
 * the part that is its subject.
 */
public final class EntryItems {
  private static final Set<String> NAMES = Set.of("item", "items", "oldItem", "newItem");
  private static final String SUBJECT = "subject";

  /** The kinds of which the names do not say it. */
  private static final EntryTable<Set<String>, Optional<List<Integer>>> OTHERWISE =
      EntryRows.<Set<String>, Optional<List<Integer>>>none()
          .on(TagsPrinted.class, (names, printed) -> printed(printed))
          .on(Act.class, (names, act) -> Optional.of(all(act)))
          .others(Optional.empty());

  private EntryItems() {}

  /** The parts' numbers; empty where the entry is about the whole job. */
  public static List<Integer> of(JobEntry entry) {
    return OTHERWISE.of(NAMES, entry).orElseGet(() -> named(entry));
  }

  private static List<Integer> named(JobEntry entry) {
    List<Integer> items = new ArrayList<>();
    for (RecordComponent component : entry.getClass().getRecordComponents()) {
      if (NAMES.contains(component.getName())) {
        add(items, value(entry, component.getAccessor()));
      } else if (component.getName().equals(SUBJECT)) {
        items.addAll(subject((String) value(entry, component.getAccessor())));
      }
    }
    return items;
  }

  /** The items of a card are no parts. */
  private static Optional<List<Integer>> printed(TagsPrinted printed) {
    return printed.type() == TagType.PART ? Optional.empty() : Optional.of(List.of());
  }

  private static List<Integer> all(Act act) {
    return act.entries().stream().flatMap(each -> of(each).stream()).distinct().toList();
  }

  private static List<Integer> subject(String key) {
    return Subject.find(key).stream()
        .flatMap(
            subject ->
                subject.match(
                    part -> Stream.of(part.item()), at -> Stream.empty(), beside -> Stream.empty()))
        .toList();
  }

  private static Object value(JobEntry entry, Method accessor) {
    try {
      return accessor.invoke(entry);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(accessor + " cannot be asked", e);
    }
  }

  private static void add(List<Integer> items, Object value) {
    if (value instanceof Integer item && item > 0) {
      items.add(item);
    } else if (value instanceof List<?> several) {
      several.forEach(each -> add(items, each));
    }
  }
}
