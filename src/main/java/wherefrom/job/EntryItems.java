package wherefrom.job;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.SubjectPhotographed;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.parts.TagType;

/** Which parts an entry speaks of: those in its components named item, items, oldItem, newItem. */
public final class EntryItems {
  private static final Set<String> NAMES = Set.of("item", "items", "oldItem", "newItem");

  private EntryItems() {}

  /** The parts' numbers; empty where the entry is about the whole job. */
  public static List<Integer> of(JobEntry entry) {
    if (entry instanceof TagsPrinted printed && printed.type() != TagType.PART) {
      return List.of();
    }
    if (entry instanceof Act act) {
      return act.entries().stream().flatMap(each -> of(each).stream()).distinct().toList();
    }
    if (entry instanceof SubjectPhotographed photo) {
      return Subject.find(photo.subject())
          .filter(Subject.APart.class::isInstance)
          .map(part -> List.of(((Subject.APart) part).item()))
          .orElse(List.of());
    }
    List<Integer> items = new ArrayList<>();
    for (RecordComponent component : entry.getClass().getRecordComponents()) {
      if (NAMES.contains(component.getName())) {
        add(items, value(entry, component.getAccessor()));
      }
    }
    return items;
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
