package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.parts.PartKind;

/**
 * What was typed of the parts that came back without tags: a group of each kind. Nothing of it is
 * in the logbook yet, so that it is kept beside the job until the whole group is agreed on.
 */
final class LostTags {
  private final Map<PartKind, Lost> groups = new EnumMap<>(PartKind.class);
  private Optional<PartKind> kind = Optional.empty();

  /** The kind that was chosen last. */
  Optional<PartKind> kind() {
    return kind;
  }

  /**
   * Takes up a kind.
   *
   * @param begun the job's latest sequence, from which a fresh group counts
   */
  Lost choose(PartKind chosen, long begun) {
    kind = Optional.of(chosen);
    return groups.computeIfAbsent(chosen, missing -> new Lost(begun));
  }

  /** The group is told apart: the next one has numbers of its own. */
  void done(PartKind told) {
    groups.remove(told);
  }

  /** A group of one kind. */
  static final class Lost {
    private final long begun;
    private final Set<String> plans = new LinkedHashSet<>();
    private final Map<String, String> tools = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> readings = new LinkedHashMap<>();

    private Lost(long begun) {
      this.begun = begun;
    }

    /** Of no kind, with nothing in it. */
    static Lost none() {
      return new Lost(0);
    }

    /** The job's latest sequence as the group was begun. */
    long begun() {
      return begun;
    }

    boolean uses(String plan) {
      return plans.contains(plan);
    }

    /** Takes a kind of reading in or leaves it out; its figures stay for when it is taken again. */
    void use(String plan) {
      if (!plans.remove(plan)) {
        plans.add(plan);
      }
    }

    Optional<String> tool(String plan) {
      return Optional.ofNullable(tools.get(plan));
    }

    void tool(String plan, String name) {
      tools.put(plan, name);
    }

    /** Keeps a figure at once: the next one may never come. */
    void read(String mark, String plan, String size) {
      readings.computeIfAbsent(mark, fresh -> new LinkedHashMap<>()).put(plan, size);
    }

    void forget(String mark) {
      readings.remove(mark);
    }

    List<String> marks() {
      return new ArrayList<>(readings.keySet());
    }

    /** By plan; empty where nothing was typed. */
    Map<String, String> sizes(String mark) {
      return Map.copyOf(readings.getOrDefault(mark, Map.of()));
    }
  }
}
